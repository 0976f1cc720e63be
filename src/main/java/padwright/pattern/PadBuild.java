package padwright.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import padwright.cover.CoverDeveloper;
import padwright.design.Defaults;
import padwright.design.OutlineShape;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.geometry.MeetingDepth;
import padwright.geometry.MovedIn;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.material.Catalogue;
import padwright.material.Status;
import padwright.material.Wadding;
import padwright.measure.InputRefused;
import padwright.measure.Sentence;
import padwright.shape.BaseSizer;
import padwright.shape.ChordSides;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.PadShape;
import padwright.shape.Section;
import padwright.shape.SectionBuilder;
import padwright.shape.Stack;

/**
 * Fills the gaps of one wrapped pad and finds its shape: catalogue rows and defaults first, then
 * the base from the size given, then what depends on the base's width.
 *
 * <p>The base of an opening depends on how thick its corners get, and those on the base: it is
 * found with one layer at the corners and again with the layers that gives, until those fit.
 */
final class PadBuild {
  /** Room that a staple needs behind it in the turn-under, mm; own choice. */
  static final double BEHIND_STAPLE = 4;

  /** A base is sized again at most so often: its corners are folded in three ways. */
  private static final int TRIALS = 4;

  /** Staples stay this far from a corner until it is made, mm; practice. */
  static final double CORNER_CLEAR = 50;

  private final WrappedPad pad;
  private final Defaults defaults = new Defaults();
  private final MakeUp made;

  private final RunStacks stacks;
  private final Outlines.Named drawn;
  private PadShape shape;
  private PadSpec spec;
  private CoverDeveloper developer;
  private double askedTurnUnder;
  private final List<FoamRules.Apart> foamApart = new ArrayList<>();
  private DryFit dryFit;

  PadBuild(WrappedPad pad, Catalogue catalogue) {
    this.pad = pad;
    made = new MakeUp(pad, catalogue, defaults);
    stacks = new RunStacks(pad, made.stack);
    drawn = drawn();
    build();
  }

  private void build() {
    double gauge = gaugeTurnUnder();
    int[] layers = {1, 1, 1, 1};
    PadShape first = shape(steps(layers), gauge);
    // A base that gets smaller may be folded another way; a side keeps the most layers it had.
    for (int k = 0; pad.base().size() != SizeMeaning.BOARD && k < TRIALS; k++) {
      int[] found = CornerLayers.perSide(developer(first, 12).plan(0).corners());
      boolean same = true;
      for (int side = 0; side < 4; side++) {
        same &= found[side] <= layers[side];
        layers[side] = Math.max(layers[side], found[side]);
      }
      if (same) {
        break;
      }
      first = shape(steps(layers), gauge);
    }
    // A curve drawn as chords may be a hair wider than it was drawn: that changes no default.
    double width = Math.round(Math.min(first.length(), first.width()) * 10) / 10.0;
    askedTurnUnder =
        defaults.turnUnder(pad.cover().turnUnder(), width, made.covering, made.coverThickness);
    double turnUnder = MeetingDepth.upTo(first.outline(), askedTurnUnder);
    double grip = defaults.grip(pad.cover().grip(), width, made.covering, made.coverThickness);
    shape = shape(steps(layers), turnUnder);
    double stop =
        defaults.reliefStop(pad.corners().reliefStop(), width, shape.section().taut().backStart());
    developer = developer(shape, stop);
    dryFit =
        new DryFit(
            pad.base().sides(),
            Arrays.stream(layers).boxed().toList(),
            made.coverThickness,
            Outlines.SIDES.stream().map(s -> stacks.of(s).greatestX()).toList(),
            pad.base().clearance());
    PlainDefaults.note(defaults, pad, made, dryFit);
    double clearance = clearance(layers);
    boolean warpAlongWidth = pad.cover().warpAlongWidth();
    double along = pad.cover().stretchAlong();
    double across = pad.cover().stretchAcross();
    boolean dust = pad.dustCover().wanted();
    spec =
        new PadSpec(
            made.board,
            pad.base().thickness(),
            made.leastThickness,
            pad.base().measured().isPresent(),
            pad.base().backArris(),
            made.foam,
            made.wadding,
            made.waddingThickness,
            made.stack.waddingOverSides(),
            pad.edge(),
            made.covering,
            made.coverThickness,
            turnUnder,
            grip,
            warpAlongWidth ? across : along,
            warpAlongWidth ? along : across,
            warpAlongWidth,
            stop,
            pad.corners().pleatDepth().orElse(0),
            made.staple,
            defaults.spacing(pad.staples().spacing(), made.covering),
            defaults.edgeDistance(pad.staples().edgeDistance(), width, made.board),
            CORNER_CLEAR,
            pad.staples().pull(),
            clearance,
            defaults.dustCoverInset(pad.dustCover().inset(), dust),
            defaults.dustCoverTurn(pad.dustCover().turn(), dust),
            defaults.taken());
  }

  /** The outline as given, with the curves that were drawn as chords. */
  private Outlines.Named drawn() {
    Outlines.Named plain = Outlines.of(pad.base().outline());
    if (!(pad.base().outline() instanceof OutlineShape.FreePath)) {
      return plain;
    }
    ChordSides read = ChordSides.read(plain, this::run);
    if (read.chords() > 0) {
      defaults.note(
          "base.outline",
          Sentence.of(
              read.arcs() == 1 ? "%d sides are 1 arc" : "%d sides are %d arcs",
              read.chords(),
              read.arcs()),
          Sentence.of(
              "short sides in a row whose points lie on a circle; they leave it by at most %.2f mm",
              read.error()),
          Status.OWN);
    }
    return read.outline();
  }

  /** The number of the run that a side belongs to; -1 where to none. */
  private Integer run(String side) {
    for (int k = 0; k < pad.runs().size(); k++) {
      if (pad.runs().get(k).sides().contains(side)) {
        return k;
      }
    }
    return -1;
  }

  /** A turn-under to find the corners' thickness with, before the base's width is known. */
  private double gaugeTurnUnder() {
    return pad.cover().turnUnder().orElse(20);
  }

  private double clearance(int[] layers) {
    if (pad.base().size() == SizeMeaning.BOARD) {
      return 0;
    }
    int most = Math.max(Math.max(layers[0], layers[1]), Math.max(layers[2], layers[3]));
    return pad.base().clearance().orElse(Defaults.clearance(made.coverThickness, most));
  }

  private double[] steps(int[] layers) {
    double[] steps = new double[4];
    for (int k = 0; k < 4; k++) {
      double x = stacks.of(Outlines.SIDES.get(k)).greatestX();
      Neighbour n = pad.base().sides().get(k);
      double clearance =
          pad.base().clearance().orElse(Defaults.clearance(made.coverThickness, layers[k]));
      steps[k] = BaseSizer.step(pad.base().size(), n, x, made.coverThickness, layers[k], clearance);
    }
    return steps;
  }

  private CoverDeveloper developer(PadShape s, double stop) {
    return new CoverDeveloper(
        s,
        pad.kind(),
        pad.front(),
        pad.corners().treatments(),
        made.covering.ease(),
        stop,
        pad.corners().pleatDepth());
  }

  private PadShape shape(double[] steps, double turnUnder) {
    Laid laid = stacks.along(BaseSizer.base(pad.base().outline(), drawn, steps, pad.id()));
    Outlines.Named base = laid.outline();
    EdgeSections sections =
        laid.sections(
            stack -> section(stack, turnUnder),
            stack -> SectionBuilder.taut(stack, made.coverThickness, turnUnder));
    List<Path> cuts = new ArrayList<>();
    foamApart.clear();
    for (int k = 0; k < made.foam.size(); k++) {
      cuts.add(foamCut(laid, k));
    }
    padwright.geometry.Bounds finished = finished(laid, sections).orElse(base.path()).bounds();
    double length = base.path().bounds().width();
    double width = base.path().bounds().height();
    boolean opening = pad.base().size() == SizeMeaning.OPENING;
    List<Double> gap = new ArrayList<>();
    if (opening) {
      for (double s : steps) {
        gap.add(s);
      }
    }
    return new PadShape(
        base.path(),
        base.names(),
        sections,
        length,
        width,
        cuts,
        finished.width(),
        finished.height(),
        sections.usual().top() + made.coverThickness,
        gap,
        RunRules.ends(pad, base.names(), turnUnder));
  }

  private Section section(Stack stack, double turnUnder) {
    return SectionBuilder.build(
        stack,
        made.foam.stream().map(f -> f.foam().name()).toList(),
        made.board.name(),
        made.wadding.map(Wadding::name).orElse(""),
        made.coverThickness,
        turnUnder);
  }

  /** A foam layer as cut: its edge as far beyond the base's as it is to stand along each side. */
  private Path foamCut(Laid laid, int layer) {
    double[] starts = laid.each(true, s -> s.cutOverhang(layer));
    double[] ends = laid.each(false, s -> s.cutOverhang(layer));
    double in =
        -Math.min(Arrays.stream(starts).min().orElse(0), Arrays.stream(ends).min().orElse(0));
    Outlines.Named base = laid.outline();
    MovedIn moved = MovedIn.of(base.path(), starts, ends);
    if (moved.loops().isEmpty()) {
      throw new InputRefused(
          "",
          0,
          "parts[" + pad.id() + "].foam",
          "stepped back by " + Sentence.of("%.1f mm", in) + " nothing is left of a layer",
          "Step it back less");
    }
    if (in > 0 && !moved.whole()) {
      String along = moved.usedUp().map(base::nearest).orElse("");
      boolean crown = laid.usual().layers().get(layer).crown();
      foamApart.add(new FoamRules.Apart(layer + 1, crown, in, moved.loops().size(), along));
    }
    return moved.loops().get(0);
  }

  private Optional<Path> finished(Laid laid, EdgeSections sections) {
    return stacks.alike()
        ? Offset.by(laid.outline().path(), sections.greatestX() + made.coverThickness)
        : moved(laid, s -> s.greatestX() + made.coverThickness);
  }

  private static Optional<Path> moved(Laid laid, ToDoubleFunction<Stack> distance) {
    return Offset.by(laid.outline().path(), laid.each(true, distance), laid.each(false, distance));
  }

  PadShape shape() {
    return shape;
  }

  PadSpec spec() {
    return spec;
  }

  CoverDeveloper developer() {
    return developer;
  }

  /** What the gap to an opening is made of. */
  DryFit dryFit() {
    return dryFit;
  }

  /** The layers that, stepped back, are no longer one. */
  List<FoamRules.Apart> foamApart() {
    return foamApart;
  }

  /** The turn-under asked for, before a narrow base limited it. */
  double askedTurnUnder() {
    return askedTurnUnder;
  }

  OptionalDouble leg() {
    return pad.staples().leg();
  }
}
