package padwright.desk.edit;

import java.util.Optional;
import padwright.measure.InputRefused;

/** What the controls of fields show, and where what is typed into them goes. */
public interface FieldSource {
  /** What a field holds, as it could be typed; empty where it is left out. */
  String typed(PartField field);

  /** What a field shows where it is left empty. */
  String taken(PartField field);

  /** Fills in a field as typed; why not, where that is refused. */
  Optional<InputRefused> type(PartField field, String typed);

  /** Makes a length or number greater by so many of the field's steps, negative for less. */
  Optional<InputRefused> nudge(PartField field, double steps);

  /** The end of a row of nudges: what comes next is undone by itself. */
  void settle();

  /** Takes back the last change of the job, whatever field it was made in. */
  void undo();

  /** Does again what was taken back last. */
  void redo();
}
