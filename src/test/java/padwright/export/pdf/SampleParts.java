package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.WrapReport;
import padwright.design.Assumption;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.PadSpec;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.fastening.Mounting;
import padwright.fastening.StaplePlan;
import padwright.geometry.Vec2;
import padwright.material.Board;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Sourced;
import padwright.material.Staple;
import padwright.material.Status;
import padwright.pattern.Figures;
import padwright.pattern.Figures.Box;
import padwright.pattern.PartResult;
import padwright.pattern.PatternSet;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.SectionBuilder;
import padwright.shape.Stack;

/** A forearm rest written out by hand but for its section, so that these tests need no engine. */
final class SampleParts {
  private static final Sourced HAND = new Sourced("made up for a test", Status.OWN);

  private SampleParts() {}

  static PatternSet set(PartResult part) {
    return new PatternSet(
        new Job(
            "Reading nook",
            Optional.of("Town library"),
            Optional.of("2026-03-14"),
            Units.MM,
            List.of(part.asked())),
        List.of(part));
  }

  static PartResult rest() {
    return rest(6, 3);
  }

  /** The rest with a number of assumptions and findings, to see how its job sheet grows. */
  static PartResult rest(int assumptions, int findings) {
    return new PartResult(
        asked(),
        spec(assumptions),
        shape(),
        new CoverPlan(
            Samples.rectangle(715, 175),
            Samples.rectangle(745, 205),
            List.of(57.6),
            List.of(20.0),
            corners()),
        new WrapReport(true, 0, 20, 0, 10, 0, 0, 0, List.of()),
        new StaplePlan(List.of(), 8, 25, List.of()),
        new Mounting(
            Optional.empty(),
            1,
            Optional.empty(),
            OptionalDouble.empty(),
            List.of(),
            List.of(
                "Glue the packing strip, 1 thick, between the turn-unders",
                "Screw from below through the desk edge, two 4 x 25 screws, 60 from each end")),
        figures(),
        SamplePieces.pieces(),
        findings(findings),
        Optional.empty());
  }

  private static PadShape shape() {
    Stack layers =
        new Stack(12, 0, List.of(new Stack.Layer(24, 0)), new EdgeShape.Round(6), 0, false);
    Outlines.Named base =
        Outlines.of(new OutlineShape.Rectangle(600, 60, List.of(0.0, 0.0, 0.0, 0.0)));
    return new PadShape(
        base.path(),
        base.names(),
        SectionBuilder.build(layers, List.of("foam"), "board", "", 1, 20),
        600,
        60,
        List.of(base.path()),
        602,
        62,
        37,
        List.of());
  }

  private static WrappedPad asked() {
    return new WrappedPad(
        "desk-rest",
        "Forearm rest",
        WrappedPad.Kind.FOREARM_REST,
        2,
        0,
        WrappedPad.Side.FRONT,
        new WrappedPad.Base(
            new OutlineShape.Rectangle(600, 60, List.of(0.0, 0.0, 0.0, 0.0)),
            WrappedPad.SizeMeaning.BOARD,
            List.of(),
            OptionalDouble.empty(),
            "birch-plywood",
            12,
            OptionalDouble.empty(),
            0,
            List.of()),
        List.of(),
        Optional.empty(),
        new EdgeShape.Round(6),
        null,
        null,
        null,
        WrappedPad.Host.none(),
        new WrappedPad.DustCover(true, OptionalDouble.empty(), OptionalDouble.empty()));
  }

  private static PadSpec spec(int assumptions) {
    List<Assumption> list = new ArrayList<>();
    for (int i = 0; i < assumptions; i++) {
      list.add(
          new Assumption(
              "cover.field" + i,
              (10 + i) + " mm",
              "what a base up to 60 wide takes, so that two turn-unders have room",
              Status.PRACTICE));
    }
    Foam firm = new Foam("firm", "Firm seat foam", 40, 200, true, List.of(), HAND);
    return new PadSpec(
        new Board("birch-plywood", "Birch plywood", List.of(), 0.5, 0, 680, 0.62, false, HAND),
        12,
        11.5,
        false,
        0,
        List.of(new PadSpec.FoamSpec(firm, 12, 0), new PadSpec.FoamSpec(firm, 12, 3)),
        Optional.empty(),
        0,
        false,
        new EdgeShape.Round(6),
        new Covering(
            "vinyl",
            "Knit-backed vinyl",
            Covering.Family.COATED,
            1,
            600,
            1370,
            0,
            0,
            0.05,
            false,
            false,
            false,
            HAND),
        1.0,
        20,
        15,
        0,
        0,
        false,
        10,
        8,
        new Staple("71", "Fine wire staple", 0.75, 0.55, 9.2, List.of(6.0, 8.0), HAND),
        25,
        8,
        50,
        OptionalDouble.empty(),
        0,
        6,
        12,
        list);
  }

  private static List<CornerPlan> corners() {
    List<CornerPlan> list = new ArrayList<>();
    for (String name : List.of("front left", "front right", "back right", "back left")) {
      list.add(
          new CornerPlan(
              name,
              WrappedPad.Treatment.MITRED_END,
              "narrow",
              Vec2.ZERO,
              Math.PI / 2,
              0,
              "end",
              10,
              List.of(),
              1,
              8,
              0,
              0,
              0,
              3,
              3,
              0,
              0,
              CornerPlan.Row.NONE));
    }
    return list;
  }

  private static Figures figures() {
    return new Figures(
        new Box(602, 62, 37),
        new Box(600, 60, 12),
        List.of(new Box(600, 60, 12), new Box(606, 66, 12)),
        List.of(),
        List.of(),
        new Figures.CoverFigures(
            715.1416, 175.1416, 57.5708, 125000, 745.1416, 205.1416, 20, 15, Map.of()),
        new Figures.StapleFigures(
            8,
            50,
            24.5,
            new Figures.StapleDepth(1, 7, 4.5, 6.45),
            new Figures.StapleDepth(3, 5, 6.5, 4.45),
            OptionalDouble.of(8)),
        1,
        List.of(),
        0.42);
  }

  private static List<Finding> findings(int n) {
    List<Finding> list = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      list.add(
          Finding.of(
              "staple-margin-" + i,
              i % 2 == 0 ? Finding.Level.CAUTION : Finding.Level.NOTE,
              "Leg 12 leaves 0.5 mm of board under its point, less than 1.5",
              0.5,
              1.5,
              "mm",
              "our own limit",
              "Take leg 8, or measure the board and write it down"));
    }
    return list;
  }
}
