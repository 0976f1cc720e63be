package padwright.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.cover.CoverPlan;
import padwright.design.PadSpec;
import padwright.fastening.StapleDepths;
import padwright.fastening.StaplePlan;
import padwright.fastening.StaplePlan.LegVerdict;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.pattern.Figures.Box;
import padwright.pattern.Figures.StapleDepth;
import padwright.shape.PadShape;

/** Reads the figures of a part off what was worked out for it. */
final class FiguresMaker {
  private static final double MM3_PER_M3 = 1e9;
  private static final double MM2_PER_M2 = 1e6;

  private FiguresMaker() {}

  static Figures of(
      PadSpec spec,
      PadShape shape,
      CoverPlan cover,
      StaplePlan staples,
      List<PatternPiece> pieces,
      double standOff) {
    Bounds trim = stretched(cover.trim(), spec).bounds();
    Path cut = stretched(cover.cut(), spec);
    List<Box> foam = new ArrayList<>();
    for (int i = 0; i < spec.foam().size(); i++) {
      Bounds b = shape.foam().get(i).bounds();
      foam.add(new Box(b.width(), b.height(), spec.foam().get(i).thickness()));
    }
    Map<String, Double> bySide = new LinkedHashMap<>();
    for (int i = 0; i < shape.sideNames().size(); i++) {
      bySide.putIfAbsent(shape.sideNames().get(i), cover.perSide().get(i));
    }
    return new Figures(
        new Box(shape.finishedLength(), shape.finishedWidth(), shape.finishedHeight()),
        new Box(shape.length(), shape.width(), spec.boardThickness()),
        foam,
        boxes(pieces, PatternPiece.Kind.WADDING),
        boxes(pieces, PatternPiece.Kind.DUST_COVER),
        new Figures.CoverFigures(
            trim.width(),
            trim.height(),
            shape.section().taut().developed(),
            cut.area(),
            cut.bounds().width(),
            cut.bounds().height(),
            spec.turnUnder(),
            spec.grip(),
            bySide),
        staples(spec, staples),
        standOff,
        shape.bareGap(),
        weight(spec, shape, pieces, cut.area()));
  }

  /** A line on the cover as it is cut: the stretch allowance taken off. */
  static Path stretched(Path p, PadSpec spec) {
    return p.scaled(1 - spec.stretchX(), 1 - spec.stretchY(), PieceMaker.CHORD_ERROR);
  }

  private static List<Box> boxes(List<PatternPiece> pieces, PatternPiece.Kind kind) {
    return pieces.stream()
        .filter(p -> p.kind() == kind)
        .map(p -> new Box(p.length(), p.width(), p.thickness()))
        .toList();
  }

  private static Figures.StapleFigures staples(PadSpec spec, StaplePlan plan) {
    int corner = cornerLayers(plan);
    OptionalDouble suggested =
        StapleDepths.longestPassing(plan.legs(), spec.staple().id())
            .map(v -> OptionalDouble.of(v.leg()))
            .orElse(OptionalDouble.empty());
    return new Figures.StapleFigures(
        plan.leg(),
        plan.positions().size(),
        spec.spacing(),
        depth(spec, plan.leg(), 1),
        depth(spec, plan.leg(), corner),
        suggested);
  }

  /** The most layers under any staple. */
  static int cornerLayers(StaplePlan plan) {
    return plan.positions().stream().mapToInt(StaplePlan.Position::layers).max().orElse(1);
  }

  private static StapleDepth depth(PadSpec spec, double leg, int layers) {
    LegVerdict v =
        StapleDepths.verdict(
            spec.staple(), leg, layers, spec.coverThickness(), spec.leastThickness());
    return new StapleDepth(
        layers,
        StapleDepths.penetration(leg, layers, spec.coverThickness()),
        v.cornerMargin(),
        v.cornerHold());
  }

  private static double weight(
      PadSpec spec, PadShape shape, List<PatternPiece> pieces, double coverArea) {
    double kg =
        shape.outline().area() * spec.boardThickness() / MM3_PER_M3 * spec.board().density();
    for (int i = 0; i < spec.foam().size(); i++) {
      PadSpec.FoamSpec f = spec.foam().get(i);
      kg += shape.foam().get(i).area() * f.thickness() / MM3_PER_M3 * f.foam().density();
    }
    kg += coverArea / MM2_PER_M2 * spec.covering().areaWeight() / 1000;
    for (PatternPiece p : pieces) {
      if (p.kind() == PatternPiece.Kind.WADDING) {
        kg += p.cutLine().area() / MM2_PER_M2 * spec.wadding().orElseThrow().areaWeight() / 1000;
      }
    }
    return kg;
  }
}
