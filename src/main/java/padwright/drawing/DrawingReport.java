package padwright.drawing;

import java.util.ArrayList;
import java.util.List;
import padwright.measure.LengthText;
import padwright.measure.Rounding;

/**
 * What was read of a drawing and what was left.
 *
 * @param format SVG or DXF
 * @param scale what one unit of the drawing is, and who says so
 * @param read the elements the outline and the openings were drawn with
 * @param left everything else
 * @param gaps the widths, mm, of gaps that were closed, in the order they were found
 * @param notes other things that were done to the drawing, as sentences without a full stop
 */
public record DrawingReport(
    String format,
    String scale,
    List<Count> read,
    List<Count> left,
    List<Double> gaps,
    List<String> notes) {
  public DrawingReport {
    read = List.copyOf(read);
    left = List.copyOf(left);
    gaps = List.copyOf(gaps);
    notes = List.copyOf(notes);
  }

  /**
   * How many elements of one kind.
   *
   * @param layer the layer or the group; empty where there is none
   * @param why why it was left; empty where the kind says it
   */
  public record Count(int count, String kind, String layer, String why) {
    /** Such as {@code 3 TEXT on layer NOTES}. */
    public String words() {
      return count
          + " "
          + kind
          + (layer.isEmpty() ? "" : " on layer " + layer)
          + (why.isEmpty() ? "" : " (" + why + ")");
    }
  }

  /** The report as lines for a person, one fact each. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(format + "; " + scale);
    read.forEach(c -> lines.add("read: " + c.words()));
    left.forEach(c -> lines.add("left: " + c.words()));
    gaps.forEach(g -> lines.add("gap closed: " + LengthText.mm(g, 3, Rounding.NEAREST)));
    lines.addAll(notes);
    return lines;
  }
}
