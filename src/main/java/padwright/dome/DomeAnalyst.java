package padwright.dome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.cover.CornerPlan;
import padwright.design.PadSpec;
import padwright.dome.DomeReport.Place;
import padwright.dome.DomeReport.Seam;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.mesh.DiscreteCurvature;
import padwright.geometry.mesh.Flattener;
import padwright.geometry.mesh.Flattening;
import padwright.geometry.mesh.MeshRefused;
import padwright.geometry.mesh.TriangleMesh;
import padwright.shape.PadShape;

/**
 * Lays the domed face of a pad flat and says what that strains. Where the covering will not take
 * it, it is cut open where seams would be and the strain that is left is worked out again.
 */
public final class DomeAnalyst {
  /** A face with less surplus a radian, mm, is as good as flat; own choice. */
  public static final double SURPLUS = 1.75;

  private DomeAnalyst() {}

  /** Empty where the face is as good as flat. */
  public static Optional<DomeReport> of(PadShape shape, PadSpec spec, List<CornerPlan> corners) {
    return of(shape, spec, corners, 1);
  }

  /**
   * The same on a finer mesh. Half the edges change a patch's strain by under a tenth, or by under
   * half a thousandth of the length, on faces of seat size; on large free outlines often by more
   * (decision 20).
   */
  static Optional<DomeReport> of(
      PadShape shape, PadSpec spec, List<CornerPlan> corners, double finer) {
    if (shape.sections().special().isEmpty()
        && FaceProfile.of(shape.section().taut()).surplus() < SURPLUS) {
      return Optional.empty();
    }
    DomedTop top = DomedTop.of(shape);
    if (top.surplus() < SURPLUS) {
      return Optional.empty();
    }
    try {
      return Optional.of(report(shape, spec, corners, top, finer));
    } catch (MeshRefused e) {
      return Optional.of(DomeReport.refused(top.surplus(), e.getMessage()));
    }
  }

  private static DomeReport report(
      PadShape shape, PadSpec spec, List<CornerPlan> corners, DomedTop top, double finer) {
    top.check();
    Path edge = top.edge();
    FaceCheck.rows(top);
    List<HipTracer.Line> lines = new HipTracer(top).lines();
    TriangleMesh mesh = DomeMesh.of(top, edge, lines, DomeMesh.size(edge.area()) / finer);
    FaceCheck.mesh(top, mesh);
    Flattening flat = Flattener.flatten(mesh);
    if (flat.refusal().isPresent()) {
      return DomeReport.refused(top.surplus(), flat.refusal().get());
    }
    Patches strain = Patches.of(flat);
    Place stretched = place(shape, corners, strain.mostStretched());
    Place eased = place(shape, corners, strain.mostEased());
    // The stretch allowance is pulled out of the covering already.
    double alongLess = spec.warpAlongWidth() ? spec.stretchY() : spec.stretchX();
    double acrossLess = spec.warpAlongWidth() ? spec.stretchX() : spec.stretchY();
    double stretchTaken =
        Math.max(
            0,
            Math.min(
                spec.covering().stretchAlong() - alongLess,
                spec.covering().stretchAcross() - acrossLess));
    DomeReport whole =
        new DomeReport(
            top.surplus(),
            Optional.empty(),
            flat.strain().mean(),
            stretched,
            eased,
            stretchTaken,
            spec.covering().ease(),
            List.of(),
            0,
            0,
            DiscreteCurvature.of(mesh).gaussBonnetGap());
    return whole.taken() ? whole : seamed(shape, corners, mesh, lines, whole);
  }

  private static DomeReport seamed(
      PadShape shape,
      List<CornerPlan> corners,
      TriangleMesh mesh,
      List<HipTracer.Line> lines,
      DomeReport whole) {
    TriangleMesh cut = mesh;
    List<Seam> seams = new ArrayList<>();
    for (HipTracer.Line line : lines) {
      Vec2 from = line.points().get(0);
      Vec2 to = line.points().get(line.points().size() - 1);
      cut = SeamCut.along(cut, from, to);
      seams.add(new Seam(name(shape, corners, line), from, to, line.hollow()));
    }
    Flattening opened = Flattener.flatten(cut);
    if (seams.isEmpty() || !usable(opened, seams)) {
      return whole;
    }
    Patches left = Patches.of(opened);
    return new DomeReport(
        whole.surplus(),
        whole.refusal(),
        whole.mean(),
        whole.stretched(),
        whole.eased(),
        whole.stretchTaken(),
        whole.easeTaken(),
        seams,
        left.mostStretched().strain(),
        left.mostEased().strain(),
        whole.gaussBonnet());
  }

  /** A seam at a hollow place opens: its two edges may lie over each other in the flat. */
  private static boolean usable(Flattening opened, List<Seam> seams) {
    return opened.refusal().isEmpty()
        || opened.flipped() == 0 && opened.settled() && seams.stream().anyMatch(Seam::hollow);
  }

  private static String name(PadShape shape, List<CornerPlan> corners, HipTracer.Line line) {
    if (line.curve()) {
      return shape.sideNames().get(line.segment());
    }
    Vec2 apex = shape.outline().segments().get(line.segment()).end();
    return near(shape, corners, apex);
  }

  private static Place place(PadShape shape, List<CornerPlan> corners, Patches.Patch at) {
    return new Place(at.strain(), at.at(), near(shape, corners, at.at()));
  }

  /** The nearest side, or the nearest corner where that is not twice as far. */
  private static String near(PadShape shape, List<CornerPlan> corners, Vec2 p) {
    String near = "";
    double away = Double.POSITIVE_INFINITY;
    List<Segment> segments = shape.outline().segments();
    for (int i = 0; i < segments.size(); i++) {
      double d = segments.get(i).distanceTo(p);
      if (d < away) {
        away = d;
        near = shape.sideNames().get(i);
      }
    }
    double reach = 2 * away + 1e-6;
    for (CornerPlan c : corners) {
      double d = c.apex().distance(p);
      if (d <= reach) {
        reach = d;
        near = c.name();
      }
    }
    return near;
  }
}
