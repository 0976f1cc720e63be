package padwright.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import padwright.geometry.ChordArcs;

/**
 * A free outline whose curves were drawn as chords, read as the arcs that were meant: each kink
 * alone is no corner, but together they turn the covering as far as the curve does.
 *
 * @param outline sides that became one arc have one name, such as "side 5 to 48"
 * @param chords how many sides became arcs; 0 where the outline is as it was drawn
 * @param arcs how many arcs
 * @param error the most that a chord leaves its arc by, mm
 */
public record ChordSides(Outlines.Named outline, int chords, int arcs, double error) {
  /**
   * @param run what a side is given of its own: sides that differ are not of one curve
   */
  public static ChordSides read(Outlines.Named drawn, Function<String, ?> run) {
    List<String> names = drawn.names();
    ChordArcs read =
        ChordArcs.of(
            drawn.path(), (a, b) -> run.apply(names.get(a)).equals(run.apply(names.get(b))));
    if (read.chords() == 0) {
      return new ChordSides(drawn, 0, 0, 0);
    }
    List<String> own = new ArrayList<>();
    for (ChordArcs.Run r : read.runs()) {
      String first = names.get(r.first());
      String last = names.get((r.first() + r.count() - 1) % names.size());
      own.add(Outlines.joined(first, last, r.count()));
    }
    return new ChordSides(
        new Outlines.Named(read.path(), own), read.chords(), read.arcs(), read.error());
  }
}
