package padwright.pattern;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.Fittings;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Corners;
import padwright.design.WrappedPad.Cover;
import padwright.design.WrappedPad.DustCover;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Staples;
import padwright.design.WrappedPad.Treatment;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.geometry.Vec2;
import padwright.material.Catalogue;
import padwright.material.CatalogueReader;

/** Builds pads for tests, one change at a time from a plain one. */
public final class Pads {
  public static final Catalogue CATALOGUE = CatalogueReader.builtIn();

  public OutlineShape outline = rectangle(600, 60);
  public SizeMeaning size = SizeMeaning.BOARD;
  public Neighbour[] sides = {Neighbour.FREE, Neighbour.FREE, Neighbour.FREE, Neighbour.FREE};
  public String board = "birch-plywood";
  public double thickness = 12;
  public OptionalDouble measured = OptionalDouble.empty();
  public double backArris = 0;
  public List<FoamLayer> foam = List.of(layer(24, 0));
  public Optional<WaddingLayer> wadding = Optional.empty();
  public EdgeShape edge = new EdgeShape.Square();
  public String covering = "knit-backed-vinyl";
  public OptionalDouble coverThickness = OptionalDouble.of(1.0);
  public OptionalDouble turnUnder = OptionalDouble.of(20);
  public OptionalDouble grip = OptionalDouble.empty();
  public double stretchAlong = 0;
  public double stretchAcross = 0;
  public List<Treatment> treatments = List.of(Treatment.AUTO);
  public OptionalDouble reliefStop = OptionalDouble.empty();
  public OptionalDouble pleatDepth = OptionalDouble.empty();
  public OptionalDouble leg = OptionalDouble.empty();
  public OptionalDouble spacing = OptionalDouble.empty();
  public OptionalDouble edgeDistance = OptionalDouble.empty();
  public OptionalDouble pull = OptionalDouble.empty();
  public Kind kind = Kind.PAD;
  public Side front = Side.FRONT;
  public Host host = Host.none();
  public List<WrappedPad.Hole> holes = List.of();
  public List<WrappedPad.Run> runs = List.of();
  public Fittings fittings = Fittings.none();

  public static OutlineShape rectangle(double length, double width, double... radius) {
    double r = radius.length == 0 ? 0 : radius[0];
    return new OutlineShape.Rectangle(
        length,
        width,
        radius.length == 4
            ? List.of(radius[0], radius[1], radius[2], radius[3])
            : List.of(r, r, r, r));
  }

  /** A free outline: each point as x, y and, where its side is an arc, the bulge. */
  public static OutlineShape free(double[]... points) {
    return new OutlineShape.FreePath(
        Arrays.stream(points)
            .map(
                p ->
                    new OutlineShape.Point(
                        new Vec2(p[0], p[1]),
                        p.length == 2
                            ? new OutlineShape.Leg.Straight()
                            : new OutlineShape.Leg.Arc(p[2])))
            .toList());
  }

  public static FoamLayer layer(double thickness, double overhang) {
    return new FoamLayer("firm", thickness, OptionalDouble.of(overhang));
  }

  /** A run with an edge shape and an overhang of its own, where they are given. */
  public static WrappedPad.Run run(
      Optional<EdgeShape> edge, OptionalDouble overhang, String... sides) {
    return new WrappedPad.Run(
        List.of(sides), edge, OptionalDouble.empty(), overhang, Optional.empty());
  }

  /** A run with a turn-under of its own. */
  public static WrappedPad.Run turned(double turnUnder, String... sides) {
    return new WrappedPad.Run(
        List.of(sides),
        Optional.empty(),
        OptionalDouble.of(turnUnder),
        OptionalDouble.empty(),
        Optional.empty());
  }

  /** A run that is not turned under. */
  public static WrappedPad.Run open(WrappedPad.Open open, String... sides) {
    return new WrappedPad.Run(
        List.of(sides),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.of(open));
  }

  /** A seat of 400 x 300 with runs of its own. */
  public static Pads seat(WrappedPad.Run... runs) {
    Pads pads = new Pads();
    pads.outline = rectangle(400, 300);
    pads.runs = List.of(runs);
    return pads;
  }

  public WrappedPad pad() {
    return new WrappedPad(
        "part",
        "Part",
        kind,
        1,
        0,
        front,
        new WrappedPad.Base(
            outline,
            size,
            List.of(sides),
            OptionalDouble.empty(),
            board,
            thickness,
            measured,
            backArris,
            holes),
        foam,
        wadding,
        edge,
        new Cover(covering, coverThickness, turnUnder, grip, stretchAlong, stretchAcross, false),
        new Corners(treatments, reliefStop, pleatDepth),
        new Staples(Optional.empty(), leg, spacing, edgeDistance, pull),
        host,
        new DustCover(true, OptionalDouble.empty(), OptionalDouble.empty()),
        runs,
        fittings);
  }

  public PartResult run() {
    return new PatternEngine(CATALOGUE).run(pad());
  }
}
