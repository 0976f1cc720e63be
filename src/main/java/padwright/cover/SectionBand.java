package padwright.cover;

import java.util.ArrayList;
import java.util.List;
import padwright.geometry.Segment;
import padwright.shape.TautPath;

/**
 * A piece of the section between two path lengths, mm; a round one in parts.
 *
 * @param pieceStart path length at which the whole piece begins
 * @param name such as "top", "wall" or "back"
 */
record SectionBand(Segment piece, double from, double to, double pieceStart, String name) {
  /** Round pieces are cut into so many, so that a curved mitre is followed by chords. */
  private static final int PER_ARC = 4;

  /** From the flat top to a little past the trim line. */
  static List<SectionBand> of(TautPath path) {
    List<SectionBand> bands = new ArrayList<>();
    double s = path.startX();
    List<Segment> pieces = path.neutral().segments();
    for (int i = 0; i < pieces.size(); i++) {
      Segment piece = pieces.get(i);
      boolean last = i == pieces.size() - 1;
      double to = last ? end(path) : s + piece.length();
      String name =
          last
              ? "back"
              : piece.isArc() ? "bend " + (i + 1) : i == 0 && flat(piece) ? "top" : "wall";
      int parts = piece.isArc() ? PER_ARC : 1;
      for (int k = 0; k < parts; k++) {
        double begins = s + (to - s) * k / parts;
        bands.add(new SectionBand(piece, begins, s + (to - s) * (k + 1) / parts, s, name));
      }
      s += piece.length();
    }
    return bands;
  }

  /** A little past the trim line. */
  static double end(TautPath path) {
    return path.developed() + 1;
  }

  private static boolean flat(Segment piece) {
    return Math.abs(piece.directionAt(0).y()) < 1e-9;
  }
}
