package padwright.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.ThreadedInsert;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.Zone;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Crossings;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.json.Node;

/** Reads cut-outs and what is let into or put on the board; all of them must lie on the base. */
final class FittingReader {
  private static final String INSIDE =
      "Measure x and y from the middle of the outline, x to the right and y to the back";

  /** Chords may leave a cut-out's arcs by this where it is looked for inside another, mm. */
  private static final double FLAT = 0.1;

  /** What is put on the board may end level with its edge; taken off before it is looked at, mm. */
  private static final double LEVEL = 1e-4;

  private final BaseReader bases;
  private final Lengths lengths;

  FittingReader(BaseReader bases, Lengths lengths) {
    this.bases = bases;
    this.lengths = lengths;
  }

  Fittings fittings(Node node, OutlineShape outline) {
    node.requireObject("cutOuts", "vents", "tNuts", "zones");
    Place place = Place.of(Outlines.path(outline));
    double across = Outlines.shorterSide(outline);
    List<Hole> vents = BaseReader.holes(node, "vents", outline, lengths);
    for (int i = 0; i < vents.size(); i++) {
      Hole vent = vents.get(i);
      place.requireInside(
          node.require("vents").array().get(i),
          "the vent",
          Path.circle(new Vec2(vent.x(), vent.y()), vent.diameter() / 2 - LEVEL));
    }
    return new Fittings(
        cutOuts(node, place), vents, tNuts(node, place, across), zones(node, place, outline));
  }

  /** The base outline, to ask whether something lies inside it. */
  private record Place(Path outline, List<Vec2> chords) {
    static Place of(Path outline) {
      return new Place(outline, outline.flattened(FLAT));
    }

    void requireInside(Node node, String what, Path path) {
      boolean inside = Polygons.contains(chords, path.start());
      if (!inside || Crossings.between(outline, path).isPresent()) {
        throw node.refuse(what + " does not lie inside the outline", INSIDE);
      }
    }
  }

  private Vec2 at(Node node) {
    return new Vec2(coordinate(node.require("x")), coordinate(node.require("y")));
  }

  private double coordinate(Node node) {
    return lengths.mm(node, -Limits.LARGEST, Limits.LARGEST);
  }

  private List<CutOut> cutOuts(Node fittings, Place place) {
    List<CutOut> list = new ArrayList<>();
    List<Path> before = new ArrayList<>();
    for (Node node : Fields.list(fittings, "cutOuts", Limits.MOST_CUT_OUTS)) {
      node.requireObject("outline", "x", "y", "covering");
      OutlineShape shape = bases.outline(node.require("outline"));
      Vec2 at = at(node);
      Path path = Outlines.path(shape).translated(at);
      place.requireInside(node, "the cut-out", path);
      for (int i = 0; i < before.size(); i++) {
        if (overlap(before.get(i), path)) {
          throw node.refuse(
              "cut-out " + (i + 1) + " and cut-out " + (before.size() + 1) + " overlap or touch",
              "Move one of them, or draw both as one outline");
        }
      }
      before.add(path);
      Optional<Node> covering = node.get("covering");
      list.add(
          new CutOut(
              shape, at.x(), at.y(), covering.map(Words.THROUGH::read).orElse(Through.TURNED)));
    }
    return list;
  }

  private static boolean overlap(Path a, Path b) {
    return a.bounds().overlaps(b.bounds())
        && (Crossings.between(a, b).isPresent()
            || Polygons.contains(a.flattened(FLAT), b.start())
            || Polygons.contains(b.flattened(FLAT), a.start()));
  }

  private List<ThreadedInsert> tNuts(Node fittings, Place place, double across) {
    List<ThreadedInsert> list = new ArrayList<>();
    for (Node node : Fields.list(fittings, "tNuts", Limits.MOST_HOLES)) {
      node.requireObject("x", "y", "barrel", "flange");
      Vec2 at = at(node);
      double barrel = lengths.mm(node.require("barrel"), Limits.LEAST_HOLE, across);
      double flange = lengths.mm(node.require("flange"), Limits.LEAST_HOLE, across);
      if (flange <= barrel) {
        throw node.require("flange")
            .refuse(
                node.require("flange").shown() + " is not wider than the barrel",
                "Give the diameter of the flange, which lies on the board's face");
      }
      place.requireInside(node, "the T-nut's flange", Path.circle(at, flange / 2 - LEVEL));
      list.add(new ThreadedInsert(at.x(), at.y(), barrel, flange));
    }
    return list;
  }

  private List<Zone> zones(Node fittings, Place place, OutlineShape outline) {
    List<Zone> list = new ArrayList<>();
    for (Node node : Fields.list(fittings, "zones", Limits.MOST_HOLES)) {
      node.requireObject("kind", "x", "y", "length", "width");
      Vec2 at = at(node);
      double length =
          lengths.mm(node.require("length"), Limits.LEAST_OUTLINE, Outlines.length(outline));
      double width =
          lengths.mm(node.require("width"), Limits.LEAST_OUTLINE, Outlines.width(outline));
      double x = length / 2 - LEVEL;
      double y = width / 2 - LEVEL;
      Path path =
          Path.polygon(new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y))
              .translated(at);
      place.requireInside(node, "the zone", path);
      list.add(new Zone(Words.ZONE.read(node.require("kind")), at.x(), at.y(), length, width));
    }
    return list;
  }
}
