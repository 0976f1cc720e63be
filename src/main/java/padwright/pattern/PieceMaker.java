package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.Gusset;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Hole;
import padwright.fastening.Mounting;
import padwright.fastening.StaplePlan;
import padwright.geometry.MovedIn;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.Kind;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;
import padwright.pattern.PatternPiece.SideUp;
import padwright.pattern.PatternPiece.StapleMark;
import padwright.shape.EdgeSections;
import padwright.shape.PadShape;
import padwright.shape.Section;

/** Turns what was worked out for a part into the flat pieces a maker cuts. */
final class PieceMaker {
  /** How far chords may leave an arc when unequal stretch makes it no arc, mm. */
  static final double CHORD_ERROR = 0.005;

  /** A base this nearly as long as wide has no longer way, mm; arithmetic only. */
  private static final double SAME = 1e-6;

  private final PieceForm form;
  private final WrappedPad pad;
  private final PadSpec spec;
  private final PadShape shape;
  private final CoverPlan cover;
  private final StaplePlan staples;
  private final Mounting mounting;

  PieceMaker(
      WrappedPad pad,
      PadSpec spec,
      PadShape shape,
      CoverPlan cover,
      StaplePlan staples,
      Mounting mounting) {
    this.pad = pad;
    this.form = new PieceForm(pad.quantity(), pad.mirrored());
    this.spec = spec;
    this.shape = shape;
    this.cover = cover;
    this.staples = staples;
    this.mounting = mounting;
  }

  List<PatternPiece> pieces() {
    List<PatternPiece> pieces = new ArrayList<>();
    pieces.add(base());
    for (int i = 0; i < spec.foam().size(); i++) {
      pieces.add(foam(i));
    }
    spec.wadding().ifPresent(w -> pieces.add(wadding()));
    pieces.add(cover());
    if (pad.dustCover().wanted()) {
      dustCover().ifPresent(pieces::add);
    }
    for (int i = 0; i < cover.gussets().size(); i++) {
      for (Gusset.Piece piece : cover.gussets().get(i).pieces()) {
        pieces.add(gusset(i, piece));
      }
    }
    mounting.packing().ifPresent(p -> pieces.add(packing(p)));
    return pieces;
  }

  private PatternPiece base() {
    List<LineMark> lines = new ArrayList<>();
    BackLines back = new BackLines(shape);
    for (Path p : back.staples(spec.edgeDistance())) {
      lines.add(new LineMark(LineKind.STAPLE, p));
    }
    for (Path p : back.trim()) {
      lines.add(new LineMark(LineKind.TRIM, p));
    }
    PieceEdges.middleLines(lines, shape.outline());
    lines.add(new LineMark(LineKind.FRONT, PieceEdges.frontEdge(shape.outline(), pad.front())));
    List<StapleMark> marks = new ArrayList<>();
    int number = 1;
    for (StaplePlan.Position p : staples.positions()) {
      marks.add(new StapleMark(number++, p.at(), p.angle(), p.layers()));
    }
    List<Path> holes = new ArrayList<>();
    List<PointMark> points = new ArrayList<>(PieceEdges.centreMarks(shape.outline()));
    for (Hole h : pad.base().holes()) {
      Vec2 at = new Vec2(h.x(), h.y());
      holes.add(Path.circle(at, h.diameter() / 2));
      points.add(new PointMark(PointKind.HOLE, at, h.diameter(), "hole"));
    }
    points.addAll(screws());
    return form.piece(
        "base",
        Kind.BASE,
        "Base",
        spec.board().name(),
        spec.boardThickness(),
        shape.outline(),
        holes,
        lines,
        marks,
        points,
        boardGrain(),
        false,
        SideUp.BACK);
  }

  /**
   * Face grain of plywood and the grain of solid wood run along the longer way of a base (common
   * practice, no source); pressed fibre has none.
   */
  private Optional<Vec2> boardGrain() {
    Vec2 along = shape.length() > shape.width() - SAME ? new Vec2(1, 0) : new Vec2(0, 1);
    return spec.board().pressedFibre() ? Optional.empty() : Optional.of(along);
  }

  private PatternPiece foam(int i) {
    PadSpec.FoamSpec f = spec.foam().get(i);
    Path outline = shape.foam().get(i);
    List<LineMark> lines = new ArrayList<>();
    PieceEdges.middleLines(lines, outline);
    lines.add(new LineMark(LineKind.FRONT, PieceEdges.frontEdge(outline, pad.front())));
    if (f.cutOverhang() > 0) {
      lines.add(new LineMark(LineKind.BASE_OUTLINE, shape.outline()));
    }
    String name = spec.foam().size() == 1 ? "Foam" : "Foam layer " + (i + 1);
    return form.plain(
        "foam-" + (i + 1),
        Kind.FOAM,
        name,
        f.foam().name(),
        f.thickness(),
        outline,
        lines,
        SideUp.EITHER);
  }

  /** Cut over the foam's face, and down the sides to the back of the board where asked. */
  private PatternPiece wadding() {
    double down =
        spec.waddingOverSides() ? spec.boardThickness() + shape.section().edgeHeight() : 0;
    Path outline = waddingEdge(down).orElse(shape.outline());
    List<LineMark> lines = new ArrayList<>();
    PieceEdges.middleLines(lines, outline);
    lines.add(new LineMark(LineKind.FRONT, PieceEdges.frontEdge(outline, pad.front())));
    if (down > 0) {
      waddingEdge(0).ifPresent(p -> lines.add(new LineMark(LineKind.FOLD, p)));
    }
    return form.plain(
        "wadding",
        Kind.WADDING,
        "Wadding",
        spec.wadding().orElseThrow().name(),
        spec.waddingThickness(),
        outline,
        lines,
        SideUp.EITHER);
  }

  /** The edge of the wadding on the face, and so far beyond it. */
  private Optional<Path> waddingEdge(double beyond) {
    // On top it is cut flush with the layer it lies on, which may be stepped back.
    ToDoubleFunction<Section> over =
        section ->
            beyond
                + section.waddingLaid()
                + (spec.waddingOverSides()
                    ? section.greatestX() - spec.waddingThickness()
                    : section.topOverhang());
    EdgeSections sections = shape.sections();
    return sections.special().isEmpty()
        ? Offset.by(shape.outline(), over.applyAsDouble(sections.usual()))
        : Offset.by(
            shape.outline(),
            sections.each(shape.sideNames(), true, over),
            sections.each(shape.sideNames(), false, over));
  }

  private PatternPiece gusset(int i, Gusset.Piece piece) {
    Gusset g = cover.gussets().get(i);
    List<LineMark> lines = new ArrayList<>();
    lines.add(new LineMark(LineKind.SEAM, piece.seam()));
    lines.add(new LineMark(g.halved() ? LineKind.SEAM : LineKind.FOLD, piece.arris()));
    piece.opening().ifPresent(opening -> lines.add(new LineMark(LineKind.RELIEF, opening)));
    boolean left = g.halved() && piece == g.pieces().get(0);
    String half = !g.halved() ? "" : left ? "-left" : "-right";
    return form.piece(
        "gusset-" + (i + 1) + half,
        Kind.GUSSET,
        !g.halved()
            ? "Gusset, " + g.corner()
            : "Gusset, " + g.corner() + (left ? ", left half" : ", right half"),
        spec.covering().name(),
        spec.coverThickness(),
        piece.cut(),
        List.of(),
        lines,
        List.of(),
        List.of(),
        Optional.of(new Vec2(0, 1)),
        spec.covering().nap(),
        SideUp.BACK);
  }

  private PatternPiece cover() {
    Path cut = stretched(cover.cut());
    List<LineMark> lines = new ArrayList<>();
    lines.add(new LineMark(LineKind.TRIM, stretched(cover.trim())));
    for (Path fold : FoldLines.of(shape, cover)) {
      lines.add(new LineMark(LineKind.FOLD, stretched(fold)));
    }
    for (CornerPlan corner : cover.corners()) {
      for (CornerPlan.Fold fold : corner.folds()) {
        lines.add(
            new LineMark(
                fold.sense() == CornerPlan.Sense.INWARD ? LineKind.CREASE : LineKind.FOLD,
                stretched(fold.line())));
      }
    }
    for (Gusset g : cover.gussets()) {
      lines.add(new LineMark(LineKind.RELIEF, stretched(g.slit())));
      for (Path seam : g.seamsOnCover()) {
        lines.add(new LineMark(LineKind.SEAM, stretched(seam)));
      }
    }
    for (Path clip : cover.clips()) {
      lines.add(new LineMark(LineKind.RELIEF, stretched(clip)));
    }
    for (Path p : FoldLines.staples(shape, cover, spec.edgeDistance())) {
      lines.add(new LineMark(LineKind.STAPLE, stretched(p)));
    }
    lines.add(new LineMark(LineKind.BASE_OUTLINE, stretched(shape.outline())));
    lines.add(
        new LineMark(
            LineKind.FRONT,
            stretched(PieceEdges.frontEdge(cover.cut(), shape.outline(), pad.front()))));
    Vec2 warp = spec.warpAlongWidth() ? new Vec2(0, 1) : new Vec2(1, 0);
    return form.piece(
        "cover",
        Kind.COVER,
        "Cover",
        spec.covering().name(),
        spec.coverThickness(),
        cut,
        List.of(),
        lines,
        new CoverStaples(shape, cover, this::stretched).of(staples),
        PieceEdges.centreMarks(cut),
        Optional.of(warp),
        spec.covering().nap(),
        SideUp.BACK);
  }

  private Path stretched(Path p) {
    return p.scaled(1 - spec.stretchX(), 1 - spec.stretchY(), CHORD_ERROR);
  }

  /** Its finished edge inside the base's; its own edge turned under beyond that. */
  private Optional<PatternPiece> dustCover() {
    List<Path> folds = MovedIn.loops(shape.outline(), -spec.dustCoverInset());
    Optional<Path> cut = Offset.by(shape.outline(), spec.dustCoverTurn() - spec.dustCoverInset());
    if (folds.isEmpty() || cut.isEmpty()) {
      return Optional.empty();
    }
    List<LineMark> lines = new ArrayList<>();
    folds.forEach(fold -> lines.add(new LineMark(LineKind.FOLD, fold)));
    PieceEdges.middleLines(lines, cut.get());
    lines.add(new LineMark(LineKind.FRONT, PieceEdges.frontEdge(cut.get(), pad.front())));
    return Optional.of(
        form.plain(
            "dust-cover",
            Kind.DUST_COVER,
            "Dust cover",
            "Dust cover cloth",
            0,
            cut.get(),
            lines,
            SideUp.BACK));
  }

  private List<PointMark> screws() {
    return mounting.positions().stream()
        .map(h -> new PointMark(PointKind.SCREW, new Vec2(h.x(), h.y()), h.diameter(), "screw"))
        .toList();
  }

  private PatternPiece packing(Path outline) {
    List<LineMark> lines = new ArrayList<>();
    PieceEdges.middleLines(lines, outline);
    return form.piece(
        "packing",
        Kind.PACKING,
        Mounting.strip(outline) ? "Packing strip" : "Packing panel",
        "Card, veneer or thin ply",
        mounting.packingThickness(),
        outline,
        List.of(),
        lines,
        List.of(),
        screws(),
        Optional.empty(),
        false,
        SideUp.BACK);
  }
}
