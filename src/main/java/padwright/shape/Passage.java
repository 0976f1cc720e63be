package padwright.shape;

import java.util.List;

/**
 * A stretch of a straight side along which one section passes into another: at each height the edge
 * runs in a straight line from where the one stands to where the other does, a ruled surface. The
 * covering takes it as short level stretches, each with the section in its middle.
 *
 * @param start section where it begins, anticlockwise
 * @param end section where it ends
 * @param stations the covering's way over the middle of each stretch, all equally long
 * @param length along the side, mm
 */
public record Passage(Section start, Section end, List<TautPath> stations, double length) {
  /** Where the two ways are compared: twenty stretches of the shorter one. */
  private static final int COMPARED = 20;

  public Passage {
    stations = List.copyOf(stations);
  }

  /** Of its two ends that over which the covering is longer. */
  public Section longer() {
    return start.taut().developed() >= end.taut().developed() ? start : end;
  }

  /**
   * Stretch along the side that the covering needs at most: a thread at the same path length all
   * along lies level on the flat, and over the pad runs from its place in one section to its place
   * in the other, sqrt(1 + (d/L)^2) as long, by Pythagoras.
   */
  public double stretch() {
    return Math.hypot(1, furthest() / length) - 1;
  }

  /** How long it would have to be for a covering that stretches so much, 0.05 = 5 %; mm. */
  public double lengthFor(double stretch) {
    return furthest() / Math.sqrt((1 + stretch) * (1 + stretch) - 1);
  }

  /** The furthest between the places of one path length in the two sections. */
  private double furthest() {
    TautPath a = start.taut();
    TautPath b = end.taut();
    double from = Math.max(a.startX(), b.startX());
    double to = Math.min(a.developed(), b.developed());
    double most = 0;
    for (int k = 0; k <= COMPARED; k++) {
      double s = from + (to - from) * k / COMPARED;
      most = Math.max(most, a.at(s).distance(b.at(s)));
    }
    return most;
  }
}
