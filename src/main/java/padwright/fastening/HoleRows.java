package padwright.fastening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import padwright.fastening.StapleLine.Place;
import padwright.geometry.Vec2;

/**
 * Sets a straight row of staples out anew where a hole lies on it: one staple close on either side
 * of the hole and equal gaps from there, so that no gap is wider than the hole itself makes it.
 * Lengths in mm; the rule is plain geometry.
 */
final class HoleRows {
  /** How finely a row is searched for where a hole begins and ends, mm: finer than one staples. */
  private static final double STEP = 0.5;

  /** Rows whose lines lie nearer than this are one row, mm and radians: rounding. */
  private static final double SAME = 1e-4;

  private final double spacing;
  private final double pitch;
  private final Predicate<Vec2> clear;

  /**
   * @param spacing no two neighbours stand further apart unless a hole lies between them
   * @param pitch nor nearer
   * @param clear whether a staple with its middle here keeps off every hole
   */
  HoleRows(double spacing, double pitch, Predicate<Vec2> clear) {
    this.spacing = Math.max(spacing, pitch);
    this.pitch = pitch;
    this.clear = clear;
  }

  /**
   * The line of a row: the name of its side, its direction, and how far from the middle it runs.
   */
  private record Line(String side, long direction, long off) {
    static Line of(Place p) {
      Vec2 normal = Vec2.polar(p.angle()).left();
      return new Line(
          p.side(), Math.round(p.angle() / SAME), Math.round(p.at().dot(normal) / SAME));
    }
  }

  /** A clear part of a row, in mm along it. */
  private record Run(double from, double to) {}

  /** The places in their order, those of every row on a hole set out anew. */
  List<Place> setOut(List<Place> places) {
    if (places.stream().allMatch(p -> clear.test(p.at()))) {
      return places;
    }
    Map<Line, List<Place>> rows = new LinkedHashMap<>();
    for (Place p : places) {
      // A fold's staple stays where the fold is.
      if (!(p.corner() && p.rank() == 0)) {
        rows.computeIfAbsent(Line.of(p), k -> new ArrayList<>()).add(p);
      }
    }
    List<Place> all = new ArrayList<>(places);
    for (List<Place> row : rows.values()) {
      if (row.size() > 1 && row.stream().anyMatch(p -> !clear.test(p.at()))) {
        int first = all.indexOf(row.get(0));
        all.removeAll(row);
        all.addAll(Math.min(first, all.size()), anew(row));
      }
    }
    return all;
  }

  private List<Place> anew(List<Place> row) {
    Vec2 along = Vec2.polar(row.get(0).angle());
    List<Place> sorted = new ArrayList<>(row);
    sorted.sort(Comparator.comparingDouble(p -> p.at().dot(along)));
    Vec2 origin = sorted.get(0).at();
    double end = sorted.get(sorted.size() - 1).at().minus(origin).dot(along);
    List<Double> stations = new ArrayList<>();
    for (Run run : clearRuns(origin, along, end)) {
      fill(stations, run, end);
    }
    List<Place> made = new ArrayList<>();
    for (double at : stations) {
      made.add(at(sorted, origin.along(along, at), rank(stations, at, end / 2)));
    }
    // An end of the row that lies on a hole is left to be moved aside by itself.
    for (Place p : List.of(sorted.get(0), sorted.get(sorted.size() - 1))) {
      if (!clear.test(p.at())) {
        made.add(p);
      }
    }
    return made;
  }

  private List<Run> clearRuns(Vec2 origin, Vec2 along, double end) {
    List<Run> runs = new ArrayList<>();
    double from = Double.NaN;
    double last = Double.NaN;
    int steps = (int) Math.ceil(end / STEP);
    for (int i = 0; i <= steps; i++) {
      double t = Math.min(end, i * STEP);
      if (clear.test(origin.along(along, t))) {
        from = Double.isNaN(from) ? t : from;
        last = t;
      } else if (!Double.isNaN(from)) {
        runs.add(new Run(from, last));
        from = Double.NaN;
      }
    }
    if (!Double.isNaN(from)) {
      runs.add(new Run(from, last));
    }
    return runs;
  }

  /** Equal gaps with a staple at either end; one alone where two would meet. */
  private void fill(List<Double> stations, Run run, double end) {
    double length = run.to() - run.from();
    int gaps = (int) Math.ceil(length / spacing - 1e-9);
    if (gaps > 0 && length / gaps < pitch) {
      gaps = (int) Math.floor(length / pitch + 1e-9);
    }
    if (gaps == 0) {
      // Beside the hole at an end of the row, where the gap is widest; else in the middle.
      boolean first = run.from() == 0;
      boolean last = run.to() == end;
      double alone = first == last ? (run.from() + run.to()) / 2 : first ? run.to() : run.from();
      if (stations.isEmpty() || alone - stations.get(stations.size() - 1) >= pitch) {
        stations.add(alone);
      }
      return;
    }
    for (int j = 0; j <= gaps; j++) {
      stations.add(run.from() + length * j / gaps);
    }
  }

  /** How many places from the middle, signed; 0 only for one that stands in the middle. */
  private static int rank(List<Double> stations, double at, double middle) {
    if (Math.abs(at - middle) < STEP) {
      return 0;
    }
    int between = 0;
    for (double s : stations) {
      boolean same = Math.signum(s - middle) == Math.signum(at - middle);
      boolean nearer = Math.abs(s - middle) <= Math.abs(at - middle);
      between += same && nearer && Math.abs(s - middle) >= STEP ? 1 : 0;
    }
    return at > middle ? between : -between;
  }

  /** Driven with the corner where the nearest of the row's old places was. */
  private static Place at(List<Place> row, Vec2 at, int rank) {
    Place old = row.get(0);
    for (Place p : row) {
      old = p.at().distance(at) < old.at().distance(at) ? p : old;
    }
    return new Place(at, old.angle(), old.side(), rank, old.corner());
  }
}
