package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.cover.CornerPlan;
import padwright.cover.CoverDeveloper;
import padwright.design.Defaults;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Staple;
import padwright.material.Status;
import padwright.material.Wadding;
import padwright.measure.InputRefused;
import padwright.measure.Sentence;
import padwright.shape.BaseSizer;
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
  private final Board board;
  private final List<PadSpec.FoamSpec> foam = new ArrayList<>();
  private final Optional<Wadding> wadding;
  private final double waddingThickness;
  private final Covering covering;
  private final Staple staple;
  private final double coverThickness;
  private final double leastThickness;
  private final Stack stack;

  private PadShape shape;
  private PadSpec spec;
  private CoverDeveloper developer;
  private double askedTurnUnder;

  PadBuild(WrappedPad pad, Catalogue catalogue) {
    this.pad = pad;
    board =
        row(
            catalogue.board(pad.base().board()),
            Catalogue.Kind.BOARD,
            pad.base().board(),
            catalogue);
    leastThickness = defaults.leastThickness(pad.base().measured(), board, pad.base().thickness());
    double height = pad.foam().stream().mapToDouble(WrappedPad.FoamLayer::thickness).sum();
    for (int i = 0; i < pad.foam().size(); i++) {
      WrappedPad.FoamLayer layer = pad.foam().get(i);
      Foam row = row(catalogue.foam(layer.foam()), Catalogue.Kind.FOAM, layer.foam(), catalogue);
      double overhang = defaults.overhang(layer.overhang(), i, row, height, pad.base().size());
      foam.add(new PadSpec.FoamSpec(row, layer.thickness(), overhang));
    }
    wadding =
        pad.wadding()
            .map(
                w ->
                    row(
                        catalogue.wadding(w.wadding()),
                        Catalogue.Kind.WADDING,
                        w.wadding(),
                        catalogue));
    waddingThickness =
        wadding
            .map(
                w ->
                    defaults.waddingThickness(
                        pad.wadding().orElseThrow().thickness(), w.compressed(), w.id()))
            .orElse(0.0);
    covering =
        row(
            catalogue.covering(pad.cover().covering()),
            Catalogue.Kind.COVERING,
            pad.cover().covering(),
            catalogue);
    coverThickness = defaults.coverThickness(pad.cover().thickness(), covering);
    staple = staple(catalogue);
    stack =
        new Stack(
            pad.base().thickness(),
            pad.base().backArris(),
            foam.stream().map(f -> new Stack.Layer(f.thickness(), f.overhang())).toList(),
            pad.edge(),
            waddingThickness,
            pad.wadding().map(WrappedPad.WaddingLayer::overSides).orElse(false));
    checkStack();
    build();
  }

  private Staple staple(Catalogue catalogue) {
    if (pad.staples().staple().isPresent()) {
      String id = pad.staples().staple().get();
      return row(catalogue.staple(id), Catalogue.Kind.STAPLE, id, catalogue);
    }
    Staple first = catalogue.staples().get(0);
    defaults.note("staples.staple", first.id(), "the first in the catalogue", Status.OWN);
    return first;
  }

  private <T> T row(Optional<T> row, Catalogue.Kind kind, String id, Catalogue catalogue) {
    return row.orElseThrow(
        () ->
            new InputRefused(
                "",
                0,
                "parts[" + pad.id() + "]",
                "the catalogue's " + kind.section() + " has no \"" + id + "\"",
                "Nearest: " + String.join(", ", catalogue.nearest(kind, id))));
  }

  /** Shapes that cannot be cut are refused before anything is worked out from them. */
  private void checkStack() {
    if (pad.edge() instanceof padwright.design.EdgeShape.Round r) {
      refuseIf(
          r.radius() > stack.foamHeight() + 1e-9,
          "edge.round",
          r.radius(),
          "is more than the foam is high",
          "Make it at most " + mm(stack.foamHeight()));
    }
    if (pad.edge() instanceof padwright.design.EdgeShape.Bevel b) {
      refuseIf(
          b.size() > stack.foamHeight() + 1e-9,
          "edge.bevel",
          b.size(),
          "is more than the foam is high",
          "Make it at most " + mm(stack.foamHeight()));
    }
    refuseIf(
        pad.base().backArris() > pad.base().thickness() / 2,
        "base.backArris",
        pad.base().backArris(),
        "is more than half the board's thickness",
        "Make it at most " + mm(pad.base().thickness() / 2));
  }

  private void refuseIf(boolean bad, String field, double value, String problem, String remedy) {
    if (bad) {
      throw new InputRefused(
          "", 0, "parts[" + pad.id() + "]." + field, mm(value) + " " + problem, remedy);
    }
  }

  private static String mm(double v) {
    return Sentence.of("%.1f mm", v);
  }

  private void build() {
    double gauge = gaugeTurnUnder();
    int[] layers = {1, 1, 1, 1};
    PadShape first = shape(steps(layers), gauge);
    // A base that gets smaller may be folded another way; a side keeps the most layers it had.
    for (int k = 0; pad.base().size() != SizeMeaning.BOARD && k < TRIALS; k++) {
      int[] found = layersPerSide(developer(first, 12).plan(0).corners());
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
    double width = Math.min(first.length(), first.width());
    askedTurnUnder = defaults.turnUnder(pad.cover().turnUnder(), width, covering, coverThickness);
    double turnUnder = Math.min(askedTurnUnder, meetingPoint(first));
    double grip = defaults.grip(pad.cover().grip(), width, covering, coverThickness);
    shape = shape(steps(layers), turnUnder);
    double stop =
        defaults.reliefStop(pad.corners().reliefStop(), width, shape.section().taut().backStart());
    developer = developer(shape, stop);
    defaultsWithoutNumbers(layers);
    double clearance = clearance(layers);
    boolean warpAlongWidth = pad.cover().warpAlongWidth();
    double along = pad.cover().stretchAlong();
    double across = pad.cover().stretchAcross();
    boolean dust = pad.dustCover().wanted();
    spec =
        new PadSpec(
            board,
            pad.base().thickness(),
            leastThickness,
            pad.base().measured().isPresent(),
            pad.base().backArris(),
            foam,
            wadding,
            waddingThickness,
            stack.waddingOverSides(),
            pad.edge(),
            covering,
            coverThickness,
            turnUnder,
            grip,
            warpAlongWidth ? across : along,
            warpAlongWidth ? along : across,
            warpAlongWidth,
            stop,
            pad.corners().pleatDepth().orElse(0),
            staple,
            defaults.spacing(pad.staples().spacing(), covering),
            defaults.edgeDistance(pad.staples().edgeDistance(), width, board),
            CORNER_CLEAR,
            pad.staples().pull(),
            clearance,
            defaults.dustCoverInset(pad.dustCover().inset(), dust),
            defaults.dustCoverTurn(pad.dustCover().turn(), dust),
            defaults.taken());
  }

  private void defaultsWithoutNumbers(int[] layers) {
    if (pad.edge() instanceof padwright.design.EdgeShape.Square) {
      defaults.note("edge", "square", "left square unless the job says otherwise", Status.OWN);
    }
    if (pad.wadding().isEmpty()) {
      defaults.note("wadding", "none", "none unless the job says otherwise", Status.OWN);
    }
    if (pad.cover().stretchAlong() == 0 && pad.cover().stretchAcross() == 0) {
      defaults.note("cover.stretchAllowance", "0", "nothing is taken off for stretch", Status.OWN);
    }
    clearanceTaken(layers);
    otherFields();
    defaults.note("foam squash", "none", "sizes are for foam at its full thickness", Status.OWN);
  }

  private void clearanceTaken(int[] layers) {
    boolean kept =
        pad.base().size() != SizeMeaning.BOARD
            && pad.base().sides().contains(Neighbour.KEEP_CLEAR)
            && pad.base().clearance().isEmpty();
    if (kept) {
      List<String> values = new ArrayList<>();
      for (int k = 0; k < 4; k++) {
        String value = mm(Defaults.clearance(coverThickness, layers[k]));
        if (pad.base().sides().get(k) == Neighbour.KEEP_CLEAR && !values.contains(value)) {
          values.add(value);
        }
      }
      defaults.note(
          "base.clearance",
          String.join(", ", values),
          "3/16 in a side with the covering in it, and never under 1.5 mm beside it",
          Status.PUBLISHED);
    }
  }

  /** Fields that mean something plain when a job leaves them out; named in one line. */
  private void otherFields() {
    List<String> plain = new ArrayList<>();
    if (pad.base().size() == SizeMeaning.BOARD) {
      plain.add("sizes are the board's");
    }
    if (pad.front() == WrappedPad.Side.FRONT) {
      plain.add("the front is the front");
    }
    if (!pad.cover().warpAlongWidth()) {
      plain.add("the warp runs along the length");
    }
    if (pad.base().backArris() == 0) {
      plain.add("the back arris is sharp");
    }
    if (pad.wadding().isPresent() && !stack.waddingOverSides()) {
      plain.add("wadding lies on the top only");
    }
    if (pad.corners().treatments().equals(List.of(WrappedPad.Treatment.AUTO))) {
      plain.add("corners are chosen by rule");
    }
    if (pad.dustCover().wanted()) {
      plain.add("there is a dust cover");
    }
    if (pad.host().fixing() == WrappedPad.Fixing.NONE) {
      plain.add("nothing holds the part down");
    }
    if (!plain.isEmpty()) {
      defaults.note(
          "other fields", String.join("; ", plain), "unless the job says otherwise", Status.OWN);
    }
  }

  /** A turn-under to find the corners' thickness with, before the base's width is known. */
  private double gaugeTurnUnder() {
    return pad.cover().turnUnder().orElse(20);
  }

  /** How far in two turn-unders meet: half the least width of the base. */
  private static double meetingPoint(PadShape shape) {
    double least = Math.min(shape.length(), shape.width());
    for (padwright.geometry.Segment s : shape.outline().segments()) {
      if (!s.isArc()) {
        // A side of a trapezoid is shorter than its bounding box says.
        least = Math.min(least, Math.max(s.length(), 1e-6));
      }
    }
    boolean plain = shape.outline().segments().stream().allMatch(s -> !s.isArc());
    return (plain ? least : Math.min(shape.length(), shape.width())) / 2;
  }

  private double clearance(int[] layers) {
    if (pad.base().size() == SizeMeaning.BOARD) {
      return 0;
    }
    int most = Math.max(Math.max(layers[0], layers[1]), Math.max(layers[2], layers[3]));
    return pad.base().clearance().orElse(Defaults.clearance(coverThickness, most));
  }

  private double[] steps(int[] layers) {
    double[] steps = new double[4];
    double x = stack.greatestX();
    for (int k = 0; k < 4; k++) {
      Neighbour n = pad.base().sides().get(k);
      double clearance =
          pad.base().clearance().orElse(Defaults.clearance(coverThickness, layers[k]));
      steps[k] = BaseSizer.step(pad.base().size(), n, x, coverThickness, layers[k], clearance);
    }
    return steps;
  }

  private static int[] layersPerSide(List<CornerPlan> corners) {
    int[] layers = {1, 1, 1, 1};
    for (CornerPlan c : corners) {
      if (c.name().equals("rim") || c.name().endsWith(" end")) {
        int most = Math.max(c.layersFirst(), c.layersSecond());
        java.util.Arrays.setAll(layers, k -> Math.max(layers[k], most));
        continue;
      }
      int before = Outlines.SIDES.indexOf(sideBefore(c.name()));
      int after = (before + 1) % 4;
      layers[before] = Math.max(layers[before], c.layersFirst());
      layers[after] = Math.max(layers[after], c.layersSecond());
    }
    return layers;
  }

  private static String sideBefore(String corner) {
    return switch (corner) {
      case "front right" -> "front";
      case "back right" -> "right";
      case "back left" -> "back";
      default -> "left";
    };
  }

  private CoverDeveloper developer(PadShape s, double stop) {
    return new CoverDeveloper(
        s,
        pad.kind(),
        pad.front(),
        pad.corners().treatments(),
        covering.ease(),
        stop,
        pad.corners().pleatDepth());
  }

  private PadShape shape(double[] steps, double turnUnder) {
    Outlines.Named base = BaseSizer.base(pad.base().outline(), steps, pad.id());
    Section section =
        SectionBuilder.build(
            stack,
            foam.stream().map(f -> f.foam().name()).toList(),
            board.name(),
            wadding.map(Wadding::name).orElse(""),
            coverThickness,
            turnUnder);
    List<Path> cuts = new ArrayList<>();
    for (PadSpec.FoamSpec f : foam) {
      cuts.add(
          Offset.by(base.path(), f.overhang())
              .orElseThrow(
                  () ->
                      new InputRefused(
                          "",
                          0,
                          "parts[" + pad.id() + "].foam",
                          "stepped back by " + mm(-f.overhang()) + " nothing is left of a layer",
                          "Step it back less")));
    }
    padwright.geometry.Bounds finished =
        Offset.by(base.path(), section.greatestX() + coverThickness).orElse(base.path()).bounds();
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
        section,
        length,
        width,
        cuts,
        finished.width(),
        finished.height(),
        section.top() + coverThickness,
        gap);
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

  /** The turn-under asked for, before a narrow base limited it. */
  double askedTurnUnder() {
    return askedTurnUnder;
  }

  OptionalDouble leg() {
    return pad.staples().leg();
  }
}
