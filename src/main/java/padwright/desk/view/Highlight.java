package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;

/**
 * What a view points at, mm of the drawing.
 *
 * @param places ringed
 * @param paths drawn over, with a dashed box round each
 */
public record Highlight(List<Vec2> places, List<Path> paths) {
  public static final Highlight NONE = new Highlight(List.of(), List.of());

  public Highlight {
    places = List.copyOf(places);
    paths = List.copyOf(paths);
  }

  public static Highlight at(Vec2... places) {
    return new Highlight(List.of(places), List.of());
  }

  /** The box round all of it; empty where there is nothing. */
  public Optional<Bounds> bounds() {
    List<Bounds> all = new ArrayList<>();
    places.forEach(p -> all.add(Bounds.of(p)));
    paths.forEach(p -> all.add(p.bounds()));
    return all.stream().reduce(Bounds::union);
  }
}
