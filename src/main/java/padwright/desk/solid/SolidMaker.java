package padwright.desk.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.Through;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;
import padwright.shape.EdgeEnds.EdgeEnd;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.Section;

/**
 * Makes the bodies of a part: every layer is the band that its section shows, carried along the
 * outline with mitred corners, closed by flat faces inside, less the holes that its piece has.
 */
final class SolidMaker {
  /** A dust cover is drawn this thick, mm: cloth whose thickness nobody asks for. */
  private static final double CLOTH = 0.5;

  /** Outlines whose middles are this near are about the same hole, mm. */
  private static final double SAME = 1e-3;

  private final PartResult result;
  private final PadShape shape;

  SolidMaker(PartResult result) {
    this.result = result;
    this.shape = result.shape();
  }

  List<Body> bodies() {
    List<Body> bodies = new ArrayList<>();
    List<Section.Layer> layers = shape.section().layers();
    int foams = result.spec().foam().size();
    int foam = 0;
    for (int i = 0; i < layers.size(); i++) {
      int layer = i;
      boolean pressed =
          layers.get(i).kind() == Section.LayerKind.WADDING && result.spec().waddingOverSides();
      BandsOnRim bands =
          BandsOnRim.of(
              shape,
              s ->
                  pressed
                      ? Band.pressed(s.layers().get(layer), s.taut())
                      : Band.of(s.layers().get(layer)));
      switch (layers.get(i).kind()) {
        case BOARD -> bodies.add(body(bands, "board", Body.Kind.BOARD, 0, holes(Kind.BASE, 0)));
        case FOAM -> {
          foam++;
          String name = foams == 1 ? "foam" : "foam layer " + foam;
          bodies.add(body(bands, name, Body.Kind.FOAM, foam, holes(Kind.FOAM, foam - 1)));
        }
        case WADDING ->
            bodies.add(body(bands, "wadding", Body.Kind.WADDING, 0, holes(Kind.WADDING, 0)));
      }
    }
    bodies.add(covering());
    onBack(bodies);
    return bodies;
  }

  /** The holes of the n-th piece of a kind. */
  private List<Path> holes(Kind kind, int n) {
    return result.pieces().stream()
        .filter(p -> p.kind() == kind)
        .skip(n)
        .findFirst()
        .map(PatternPiece::innerCuts)
        .orElse(List.of());
  }

  private static Body body(
      BandsOnRim bands, String name, Body.Kind kind, int layer, List<Path> holes) {
    BiFunction<Double, Double, Chains> straight =
        (low, high) -> Chains.of(List.of(Band.sheet(0, low, high)));
    return body(bands.rim(), bands.chains(), name, kind, layer, holes, straight);
  }

  /**
   * A body with holes.
   *
   * @param lining what the wall of a hole is, between the heights at which it begins and ends, out
   *     from the hole; its top comes last
   */
  private static Body body(
      Rim rim,
      Chains chains,
      String name,
      Body.Kind kind,
      int layer,
      List<Path> holes,
      BiFunction<Double, Double, Chains> lining) {
    BodyMaker maker = new BodyMaker();
    List<List<Vec3>> rings = rim.rings(chains);
    List<Vec3> bottom = rings.get(0);
    List<Vec3> top = rings.get(rings.size() - 1);
    int[][] ends = maker.walls(rings, rim.arrises(chains));
    List<int[]> below = new ArrayList<>();
    List<int[]> above = new ArrayList<>();
    for (Path hole : holes) {
      Chains wall = lining.apply(bottom.get(0).z(), top.get(0).z());
      Path way = hole.signedArea() < 0 ? hole.reversed() : hole;
      Rim edge = Rim.plain(way);
      List<List<Vec3>> down = new ArrayList<>(edge.rings(wall));
      java.util.Collections.reverse(down);
      // A hole that runs out of the flat of its layer is not drawn in it.
      if (BodyMaker.within(down.get(0), top)
          && BodyMaker.within(down.get(down.size() - 1), bottom)) {
        int[][] hung = maker.walls(down, new boolean[down.size()][down.get(0).size()]);
        above.add(hung[0]);
        below.add(hung[1]);
      }
    }
    maker.face(ends[0], below, false);
    maker.face(ends[1], above, true);
    return maker.body(name, kind, layer);
  }

  private Body covering() {
    double thickness = result.spec().coverThickness();
    List<Double> under = result.cover().turnUnder();
    BandsOnRim bands =
        BandsOnRim.of(
            shape,
            (section, k) -> {
              EdgeEnd end = shape.ends().of(shape.sideNames().get(k));
              double level = end.turned() ? 0 : end.level(section.taut());
              return new CoverKey(section, end.turned() ? under.get(k) : -1, level);
            },
            key -> Band.covering(key.section().taut(), thickness, key.turnUnder(), key.level()));
    List<Path> turned = new ArrayList<>();
    for (CutOut c : result.asked().fittings().cutOuts()) {
      if (c.through() == Through.TURNED) {
        turned.add(Outlines.of(c.shape()).path().translated(new Vec2(c.x(), c.y())));
      }
    }
    double flap = turned.stream().mapToDouble(this::flap).min().orElse(0);
    return body(
        bands.rim(),
        bands.chains(),
        "covering",
        Body.Kind.COVERING,
        0,
        turned,
        (low, high) -> Chains.lining(thickness, flap, low, high));
  }

  private record CoverKey(Section section, double turnUnder, double level) {}

  /** How far the covering turned through a hole lies on the back, by the trim line there. */
  private double flap(Path hole) {
    Bounds box = hole.bounds();
    return result.pieces().stream()
        .filter(p -> p.kind() == Kind.BASE)
        .flatMap(p -> p.lines().stream())
        .filter(l -> l.kind() == LineKind.TRIM && l.path().closed())
        .map(l -> l.path().bounds())
        .filter(b -> b.centre().distance(box.centre()) < SAME)
        .mapToDouble(b -> (b.width() - box.width()) / 2)
        .filter(f -> f > 0 && f <= result.spec().turnUnder() + SAME)
        .min()
        .orElse(0);
  }

  private void onBack(List<Body> bodies) {
    double down = -result.spec().coverThickness();
    Optional<PatternPiece> packing = result.piece(Kind.PACKING);
    if (packing.isPresent()) {
      PatternPiece p = packing.get();
      bodies.add(
          sheet(
              p.name().toLowerCase(java.util.Locale.ROOT),
              Body.Kind.PACKING,
              p.cutLine(),
              p.innerCuts(),
              -p.thickness(),
              0));
      down = Math.min(down, -p.thickness());
    }
    Optional<PatternPiece> cloth = result.piece(Kind.DUST_COVER);
    if (cloth.isPresent()) {
      List<Path> folds =
          cloth.get().lines().stream()
              .filter(l -> l.kind() == LineKind.FOLD)
              .map(PatternPiece.LineMark::path)
              .toList();
      bodies.add(
          sheet(
              "dust cover",
              Body.Kind.DUST_COVER,
              folds.get(0),
              folds.subList(1, folds.size()),
              down - CLOTH,
              down));
    }
  }

  private static Body sheet(
      String name, Body.Kind kind, Path outline, List<Path> holes, double low, double high) {
    Path way = outline.signedArea() < 0 ? outline.reversed() : outline;
    Chains chains = Chains.of(List.of(Band.sheet(0, low, high)));
    return body(new BandsOnRim(Rim.plain(way), chains), name, kind, 0, holes);
  }
}
