package padwright.export;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.cover.CoverDeveloper;
import padwright.cover.CoverPlan;
import padwright.cover.LayerCounter;
import padwright.cover.WrapReport;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.PadSpec;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.Treatment;
import padwright.fastening.Mounting;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlanner;
import padwright.pattern.Figures;
import padwright.pattern.PartResult;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.Section;
import padwright.shape.Stack;

/** Whole results put together for the tests of drawings, from the developing packages. */
final class Results {
  private Results() {}

  static PartResult of(OutlineShape outline, Kind kind, Treatment treatment, double foam) {
    PadSpec spec =
        Sections.spec(12, List.of(new Stack.Layer(foam, 0)), new EdgeShape.Square(), 0, 1.0, 20);
    Section section = Sections.section(spec);
    Outlines.Named named = Outlines.of(outline);
    var b = named.path().bounds();
    PadShape shape =
        new PadShape(
            named.path(),
            named.names(),
            section,
            b.width(),
            b.height(),
            List.of(named.path()),
            b.width() + 2,
            b.height() + 2,
            section.top() + 1,
            List.of());
    CoverDeveloper developer =
        new CoverDeveloper(
            shape,
            kind,
            Side.FRONT,
            List.of(treatment),
            treatment == Treatment.PLEATS ? 0.05 : 0.3,
            12,
            OptionalDouble.empty());
    CoverPlan cover = developer.plan(15);
    LayerCounter layers = new LayerCounter(cover.trim().flattened(0.05), developer.skeleton());
    StaplePlan staples =
        new StaplePlanner(shape, spec, kind, Side.FRONT)
            .plan(cover.corners(), layers, List.of(), OptionalDouble.of(8), List.of(spec.staple()));
    Figures figures =
        new Figures(
            null,
            null,
            List.of(),
            List.of(),
            List.of(),
            null,
            new Figures.StapleFigures(
                8,
                staples.positions().size(),
                25,
                new Figures.StapleDepth(1, 7.0, 4.5, 6.1),
                new Figures.StapleDepth(3, 5.0, 6.5, 4.1),
                OptionalDouble.of(8)),
            1.0,
            List.of(),
            0.5);
    return new PartResult(
        null,
        spec,
        shape,
        cover,
        new WrapReport(true, 0, 20, 0, 12, 0, 0, 0, List.of()),
        staples,
        new Mounting(
            Optional.empty(), 0, Optional.empty(), OptionalDouble.empty(), List.of(), List.of()),
        figures,
        List.of(),
        List.of(),
        Optional.empty());
  }

  static final Map<String, PartResult> ALL =
      Map.of(
          "rest",
              of(
                  new OutlineShape.Rectangle(600, 60, List.of(0.0, 0.0, 0.0, 0.0)),
                  Kind.FOREARM_REST,
                  Treatment.MITRED_END,
                  24),
          "single",
              of(
                  new OutlineShape.Rectangle(400, 300, List.of(0.0, 0.0, 0.0, 0.0)),
                  Kind.SEAT,
                  Treatment.SINGLE_PLEAT,
                  50),
          "double",
              of(
                  new OutlineShape.Rectangle(400, 300, List.of(0.0, 0.0, 0.0, 0.0)),
                  Kind.SEAT,
                  Treatment.DOUBLE_PLEAT,
                  50),
          "trapezoid",
              of(new OutlineShape.Trapezoid(420, 360, 380), Kind.SEAT, Treatment.SINGLE_PLEAT, 50),
          "roundcorner",
              of(
                  new OutlineShape.Rectangle(400, 300, List.of(60.0, 60.0, 60.0, 60.0)),
                  Kind.SEAT,
                  Treatment.PLEATS,
                  30),
          "eased",
              of(
                  new OutlineShape.Rectangle(400, 300, List.of(80.0, 80.0, 80.0, 80.0)),
                  Kind.SEAT,
                  Treatment.EASED,
                  6),
          "notches",
              of(
                  new OutlineShape.Rectangle(400, 300, List.of(80.0, 80.0, 80.0, 80.0)),
                  Kind.SEAT,
                  Treatment.NOTCHES,
                  6),
          "stool", of(new OutlineShape.Circle(320), Kind.STOOL_TOP, Treatment.PLEATS, 40));
}
