package padwright.geometry;

import java.util.List;

/** A closed path made ready for being asked about many places. */
public final class PathPlaces {
  private final List<Segment> segments;
  private final Boxes boxes;
  private final EdgeBands chords;

  /**
   * @param chordError how far chords may leave the path where a place inside it is asked for, mm
   */
  public PathPlaces(Path path, double chordError) {
    segments = path.segments();
    boxes = Boxes.of(segments);
    chords = new EdgeBands(path.flattened(chordError));
  }

  /** Whether a place lies inside; on the edge it may go either way. */
  public boolean contains(Vec2 place) {
    return chords.contains(place);
  }

  /** Whether a place lies nearer to the path itself than a distance, mm. */
  public boolean nearer(Vec2 place, double distance) {
    for (int i : boxes.near(place, distance)) {
      if (segments.get(i).distanceTo(place) < distance) {
        return true;
      }
    }
    return false;
  }
}
