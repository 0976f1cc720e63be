package padwright.desk.model;

import java.util.Optional;
import padwright.desk.edit.FieldSource;
import padwright.desk.edit.PartField;
import padwright.measure.InputRefused;

/** Fields of the part on the bench, by their places in the job file. */
public record PartSource(Desk desk) implements FieldSource {
  @Override
  public String typed(PartField field) {
    return desk.typed(field);
  }

  @Override
  public String taken(PartField field) {
    return desk.taken(field);
  }

  @Override
  public Optional<InputRefused> type(PartField field, String typed) {
    return desk.type(field, typed);
  }

  @Override
  public Optional<InputRefused> nudge(PartField field, double steps) {
    return desk.nudge(field, steps);
  }

  @Override
  public void settle() {
    desk.settle();
  }

  @Override
  public void undo() {
    desk.undo();
  }

  @Override
  public void redo() {
    desk.redo();
  }
}
