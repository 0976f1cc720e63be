package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.PadSpec;
import padwright.fastening.FittingPlan;
import padwright.fastening.FittingPlan.Opening;
import padwright.fastening.FittingPlan.Patch;
import padwright.fastening.FittingPlan.Round;
import padwright.fastening.MountingPlanner;
import padwright.fastening.TurnedThrough;
import padwright.geometry.MovedIn;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PatternPiece.LineKind;
import padwright.pattern.PatternPiece.LineMark;
import padwright.pattern.PatternPiece.PointKind;
import padwright.pattern.PatternPiece.PointMark;

/**
 * Puts cut-outs, vents, T-nuts and zones on the pieces of a part: holes in the base and in every
 * foam layer at the size of the base's; slits, folds and a trim line on the cover, to be cut when
 * it is fast all round; a turned-in hole in the dust cover; room for the tongues in the packing.
 * The dust cover breathes and is left whole over vents.
 */
final class FittingPieces {
  private final FittingPlan fittings;
  private final PadSpec spec;

  private FittingPieces(FittingPlan fittings, PadSpec spec) {
    this.fittings = fittings;
    this.spec = spec;
  }

  static List<PatternPiece> on(List<PatternPiece> pieces, FittingPlan fittings, PadSpec spec) {
    if (fittings.isEmpty()) {
      return pieces;
    }
    FittingPieces made = new FittingPieces(fittings, spec);
    return pieces.stream().map(made::on).toList();
  }

  private PatternPiece on(PatternPiece piece) {
    List<Path> inner = new ArrayList<>(piece.innerCuts());
    List<LineMark> lines = new ArrayList<>(piece.lines());
    List<PointMark> points = new ArrayList<>(piece.points());
    switch (piece.kind()) {
      case BASE -> base(inner, lines, points);
      case FOAM -> fittings.cutOuts().forEach(o -> hole(o, inner, points));
      case WADDING -> turned().forEach(o -> hole(o, inner, points));
      case COVER -> turned().forEach(o -> cover(o, lines, points));
      case DUST_COVER -> dustCover(inner, lines, points);
      case PACKING -> packing(piece.cutLine(), inner, points);
      case GUSSET -> {}
    }
    return new PatternPiece(
        piece.id(),
        piece.kind(),
        piece.name(),
        piece.quantity(),
        piece.mirrored(),
        piece.material(),
        piece.thickness(),
        piece.cutLine(),
        inner,
        lines,
        piece.staples(),
        points,
        piece.grain(),
        piece.nap(),
        piece.side(),
        piece.length(),
        piece.width());
  }

  private List<Opening> turned() {
    return fittings.cutOuts().stream().filter(o -> o.turned().isPresent()).toList();
  }

  private void base(List<Path> inner, List<LineMark> lines, List<PointMark> points) {
    for (Opening o : fittings.cutOuts()) {
      inner.add(o.hole());
      boolean turned = o.turned().isPresent();
      String how = turned ? ": ease its back arris" : ": covering left whole";
      points.add(new PointMark(PointKind.HOLE, middle(o.hole()), 0, ""));
      points.add(area(o.hole(), o.name() + how));
      if (turned && o.turned().get().reaches()) {
        outside(o, spec.edgeDistance()).ifPresent(p -> lines.add(line(LineKind.STAPLE, p)));
        outside(o, o.turnUnder()).ifPresent(p -> lines.add(line(LineKind.TRIM, p)));
      }
    }
    for (Round v : fittings.vents()) {
      inner.add(v.hole());
      points.add(new PointMark(PointKind.HOLE, v.at(), v.diameter(), "vent"));
    }
    for (Round t : fittings.inserts()) {
      inner.add(t.hole());
      points.add(new PointMark(PointKind.HOLE, t.at(), t.diameter(), "T-nut, from the face"));
    }
    for (Patch z : fittings.zones()) {
      lines.add(line(LineKind.ZONE, z.area()));
      points.add(area(z.area(), z.name()));
    }
  }

  private static void hole(Opening o, List<Path> inner, List<PointMark> points) {
    inner.add(o.hole());
    points.add(area(o.hole(), o.name()));
  }

  private static PointMark area(Path path, String label) {
    return new PointMark(PointKind.AREA, middle(path), 0, label);
  }

  private static Vec2 middle(Path path) {
    return path.bounds().centre();
  }

  private static Optional<Path> outside(Opening o, double by) {
    return Offset.by(o.hole(), by);
  }

  private static LineMark line(LineKind kind, Path path) {
    return new LineMark(kind, path);
  }

  /** Bends by their middles, as round the base: half a thickness out, a quarter turn each. */
  private void cover(Opening o, List<LineMark> lines, List<PointMark> points) {
    points.add(area(stretched(o.hole()), o.name()));
    TurnedThrough turned = o.turned().orElseThrow();
    double bend = Math.PI / 4 * spec.coverThickness();
    inside(o, bend / 2).forEach(p -> lines.add(line(LineKind.FOLD, p)));
    if (!turned.within()) {
      return;
    }
    if (turned.reaches()) {
      inside(o, turned.wall() - bend / 2).forEach(p -> lines.add(line(LineKind.FOLD, p)));
      if (turned.reach() > turned.wall() + turned.turnUnder() + 1) {
        inside(o, turned.wall() + turned.turnUnder())
            .forEach(p -> lines.add(line(LineKind.TRIM, p)));
      }
    }
    turned.slits().forEach(s -> lines.add(line(LineKind.SLIT, stretched(s))));
  }

  /** The line so far inside a hole; several where it comes apart. */
  private List<Path> inside(Opening o, double by) {
    return MovedIn.loops(o.hole(), -by).stream().map(this::stretched).toList();
  }

  private Path stretched(Path p) {
    return FiguresMaker.stretched(p, spec);
  }

  /** Its finished edge stays as far from the hole's as from the base's; its own is turned. */
  private void dustCover(List<Path> inner, List<LineMark> lines, List<PointMark> points) {
    for (Opening o : fittings.cutOuts()) {
      outside(o, spec.dustCoverInset()).ifPresent(p -> lines.add(line(LineKind.FOLD, p)));
      // Where a hole is smaller than the turn, what there is is turned.
      double by = spec.dustCoverInset() - spec.dustCoverTurn();
      List<Path> cut = by < 0 ? MovedIn.loops(o.hole(), by) : outside(o, by).stream().toList();
      inner.addAll(cut.isEmpty() ? List.of(o.hole()) : cut);
      points.add(area(o.hole(), o.name()));
    }
    for (Round t : fittings.inserts()) {
      points.add(new PointMark(PointKind.HOLE, t.at(), t.diameter(), "T-nut: pierce"));
    }
  }

  /** Packing leaves room for the tongues and for the air, and lets bolts through. */
  private void packing(Path cutLine, List<Path> inner, List<PointMark> points) {
    List<Vec2> outline = cutLine.flattened(PieceMaker.CHORD_ERROR);
    for (Opening o : fittings.cutOuts()) {
      double room = o.turnUnder() > 0 ? o.turnUnder() + MountingPlanner.PACKING_CLEAR : 0;
      outside(o, room)
          .filter(p -> within(p, outline))
          .ifPresent(
              p -> {
                inner.add(p);
                points.add(area(p, o.name()));
              });
    }
    for (Round v : fittings.vents()) {
      hole(v, "vent", outline, inner, points);
    }
    for (Round t : fittings.inserts()) {
      hole(t, "T-nut", outline, inner, points);
    }
  }

  private static void hole(
      Round r, String label, List<Vec2> outline, List<Path> inner, List<PointMark> points) {
    if (within(r.hole(), outline)) {
      inner.add(r.hole());
      points.add(new PointMark(PointKind.HOLE, r.at(), r.diameter(), label));
    }
  }

  private static boolean within(Path p, List<Vec2> outline) {
    return p.flattened(PieceMaker.CHORD_ERROR).stream()
        .allMatch(v -> padwright.geometry.Polygons.contains(outline, v));
  }
}
