package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import padwright.cover.CornerPlan;
import padwright.cover.Gusset;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Treatment;
import padwright.measure.Rounding;
import padwright.pattern.Figures;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece.Kind;
import padwright.shape.Passage;

/**
 * The steps of building one part, in order, one or two sentences each. Common practice of the
 * trade, no source, but for the order of stapling a seat (Woodworker's Journal 32-6, 2008, p. 63).
 */
final class OrderOfWork {
  /** A base no wider than this is stapled one long side after the other, mm; our own limit. */
  private static final double NARROW = 75;

  private final PartResult part;
  private final PadSpec spec;
  private final Figures figures;
  private final List<String> steps = new ArrayList<>();

  private OrderOfWork(PartResult part) {
    this.part = part;
    spec = part.spec();
    figures = part.figures();
  }

  static List<String> steps(PartResult part) {
    OrderOfWork w = new OrderOfWork(part);
    w.board();
    w.steps.addAll(FittingSteps.beforeFoam(part));
    w.foam();
    w.cover();
    w.staple();
    w.steps.addAll(FittingSteps.afterCorners(part));
    w.finish();
    w.steps.addAll(FittingSteps.last(part));
    return List.copyOf(w.steps);
  }

  private void board() {
    Figures.Box b = figures.base();
    steps.add(
        String.format(
            Locale.ROOT,
            "Cut the base, %s x %s mm, not larger. %s%s",
            Sizes.mm(b.length(), Rounding.DOWN),
            Sizes.mm(b.width(), Rounding.DOWN),
            spec.backArris() > 0
                ? "Round the back arris to " + Sizes.mm(spec.backArris()) + " mm."
                : "Take the sharpness off the back arris.",
            part.asked().base().holes().isEmpty() ? "" : " Drill the holes."));
    List<Double> gap = figures.bareGap();
    if (gap.size() == 4) {
      steps.add(
          String.format(
              Locale.ROOT,
              "Dry fit: the bare base in its opening shows a gap of %s mm in front, %s right, %s at"
                  + " the back, %s left. Mark its front.",
              Sizes.mm(gap.get(0)),
              Sizes.mm(gap.get(1)),
              Sizes.mm(gap.get(2)),
              Sizes.mm(gap.get(3))));
    } else {
      steps.add("Dry fit: hold the bare base in its place. Mark its front.");
    }
  }

  private void foam() {
    List<PadSpec.FoamSpec> layers = spec.foam();
    for (int i = 0; i < layers.size(); i++) {
      PadSpec.FoamSpec layer = layers.get(i);
      String name = layers.size() == 1 ? "the foam" : "foam layer " + (i + 1);
      steps.add(
          "Lay the base on "
              + name
              + " as the template, draw round it and cut "
              + beside(layer.cutOverhang())
              + along(run -> ownOverhang(run, layer), mm -> beside(layer, mm))
              + passages(p -> !layer.crown() && p.start().topOverhang() != p.end().topOverhang())
              + ", blade upright.");
    }
    if (!layers.isEmpty()) {
      steps.add(
          "Glue "
              + (layers.size() == 1
                  ? "the foam to the base"
                  : "the layers one on the other, from the base up")
              + ": thin on both faces, wait till it is tacky, lay from the middle outwards, even all"
              + " round. Let it dry.");
    }
    if (layers.stream().anyMatch(PadSpec.FoamSpec::crown)) {
      steps.add(
          "What lies over the crown: glue its middle first, then bend it down to the edge of the"
              + " layer below, opposite sides in turn, and hold it there till it has set. Trim its"
              + " edge upright and level with the line.");
    }
    String shapes = along(Run::edge, OrderOfWork::shaped);
    if (!shapes.isEmpty() || !(spec.edge() instanceof EdgeShape.Square)) {
      String between = passages(p -> !p.start().edge().equals(p.end().edge()));
      steps.add("Shape the foam's edge: " + shaped(spec.edge()) + shapes + between + ".");
    }
    if (spec.wadding().isPresent()) {
      steps.add(
          "Lay the wadding over the top"
              + (spec.waddingOverSides()
                  ? " and the sides, not under the back"
                  : ", flush with the edge")
              + "; a touch of glue holds it.");
    }
  }

  /** A run does not move the crown's edge. */
  private static Optional<Double> ownOverhang(Run run, PadSpec.FoamSpec layer) {
    return layer.crown() || run.overhang().isEmpty()
        ? Optional.empty()
        : Optional.of(run.overhang().getAsDouble());
  }

  /** Laid over a crown a layer is cut larger by a bend of its own there. */
  private static String beside(PadSpec.FoamSpec layer, double overhang) {
    return layer.laid() > 0 ? "as its pattern shows" : beside(overhang);
  }

  private static String beside(double overhang) {
    return overhang == 0
        ? "on the line"
        : Sizes.mm(Math.abs(overhang))
            + " mm "
            + (overhang > 0 ? "outside" : "inside")
            + " the line";
  }

  private static String shaped(EdgeShape edge) {
    if (edge instanceof EdgeShape.Round r) {
      return "round its top edge to radius " + Sizes.mm(r.radius()) + " mm";
    }
    if (edge instanceof EdgeShape.Bevel v) {
      return "bevel its top edge " + Sizes.mm(v.size()) + " mm in and down";
    }
    return edge instanceof EdgeShape.FullRound
        ? "round it to a half circle over its whole height"
        : "leave it square";
  }

  /** What the runs that have something of their own do: {@code ; along front, back ...}. */
  private <T> String along(Function<Run, Optional<T>> own, Function<T, String> words) {
    StringBuilder said = new StringBuilder();
    for (Run run : part.asked().runs()) {
      own.apply(run)
          .ifPresent(
              v ->
                  said.append("; along ")
                      .append(String.join(", ", run.sides()))
                      .append(' ')
                      .append(words.apply(v)));
    }
    return said.toString();
  }

  /** Where the edge passes from the one into the other, and over what length. */
  private String passages(Predicate<Passage> which) {
    List<String> stretches = new ArrayList<>();
    for (String side : part.shape().sideNames()) {
      Passage passage = part.shape().sections().passages().get(side);
      if (passage != null && which.test(passage)) {
        stretches.add("the " + side + " (" + Sizes.mm(passage.length()) + " mm)");
      }
    }
    return stretches.isEmpty()
        ? ""
        : "; along " + String.join(" and ", stretches) + " straight from the one to the other";
  }

  private void cover() {
    steps.add(
        "Mark the cover on the back of the covering: cut line, trim line, fold lines, centre marks."
            + " Cut it out on the solid cut line"
            + (cornersAreCut() ? ", its corners too; no cut goes further than drawn." : "."));
    for (Gusset g : part.cover().gussets()) {
      steps.add(
          "At "
              + g.corner()
              + ", which is hollow: slit the cover as drawn, to the tip of its seam lines. "
              + (g.halved()
                  ? "Sew the gusset's two halves together, from the tip down to the end of their"
                      + " middle seam. "
                  : "")
              + "Lay the gusset's edge on the slit's, outside to outside, and sew each seam from"
              + " the tip out along its line"
              + (g.halved() ? "." : "; then snip the gusset up its middle as drawn."));
    }
    if (cornersAreCut()) {
      steps.add(
          "Before any staple: lay the cover on the pad dry, its fold lines on the edges, and press"
              + " each corner as its diagram shows. No raw edge may show on the face or the sides."
              + " Where one does, mark and cut the cover anew.");
    }
    steps.add(
        String.format(
            Locale.ROOT,
            "Drive one staple (leg %s mm) through the covering into an off-cut of the board: the points"
                + " must not come through.",
            Sizes.mm(figures.staples().leg())));
  }

  /** Whether anything is cut out of the cover at its corners. */
  private boolean cornersAreCut() {
    return part.cover().corners().stream()
        .anyMatch(
            c ->
                c.reliefStop() > 0
                    || c.treatment() == Treatment.DOUBLE_PLEAT
                    || c.treatment() == Treatment.NOTCHES);
  }

  private void staple() {
    String order;
    if (round()) {
      order = "one staple each at 12, 6, 3 and 9 o'clock, then half way between, always opposite";
    } else if (narrow()) {
      order =
          "one long side from its centre outwards, then the other, pulled even; the ends after them";
    } else if (part.asked().kind() == WrappedPad.Kind.SEAT) {
      order =
          "front centre, back centre, pull the front again, the sides; then from the centres outwards";
    } else {
      order =
          "front centre, back centre, then the sides; from the centres outwards, opposite in turn";
    }
    steps.add(
        "Face down, centre marks on centre marks: "
            + order
            + ". Follow the numbers on the base pattern, "
            + Sizes.mm(part.staples().mostApart(figures.staples().spacing()))
            + " mm apart at most, "
            + Sizes.mm(spec.edgeDistance())
            + " mm from the edge."
            + (round() ? "" : " Corners last."));
    corners();
  }

  private boolean round() {
    OutlineShape shape = part.asked().base().outline();
    return shape instanceof OutlineShape.Circle || shape instanceof OutlineShape.Ellipse;
  }

  private boolean narrow() {
    WrappedPad.Kind kind = part.asked().kind();
    return kind == WrappedPad.Kind.FOREARM_REST
        || kind == WrappedPad.Kind.ARMREST
        || Math.min(figures.base().length(), figures.base().width()) <= NARROW;
  }

  private void corners() {
    List<String> said = new ArrayList<>();
    for (CornerPlan c : part.cover().corners()) {
      String how = CornerSteps.of(c);
      if (!said.contains(how)) {
        said.add(how);
        List<String> names =
            part.cover().corners().stream()
                .filter(o -> CornerSteps.of(o).equals(how))
                .map(CornerPlan::name)
                .toList();
        boolean all = names.size() == part.cover().corners().size();
        String where = round() ? "Rim" : all ? "Corners" : "Corner " + String.join(", ", names);
        steps.add(where + ": " + how);
      }
    }
  }

  private void finish() {
    steps.add("Look at the face and the corners; then trim the turn-under on the trim line.");
    if (part.piece(Kind.DUST_COVER).isPresent()) {
      steps.add(
          String.format(
              Locale.ROOT,
              "Dust cover: turn its edge in by %s mm, lay it %s mm inside the base's edge, staple.",
              Sizes.mm(spec.dustCoverTurn()),
              Sizes.mm(spec.dustCoverInset())));
    }
  }
}
