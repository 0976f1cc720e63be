package padwright.crown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.cover.CornerPlan;
import padwright.crown.CrownReport.Place;
import padwright.crown.CrownReport.Sample;
import padwright.crown.CrownReport.Seam;
import padwright.design.PadSpec;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.geometry.mesh.DiscreteCurvature;
import padwright.geometry.mesh.Flattener;
import padwright.geometry.mesh.Flattening;
import padwright.geometry.mesh.MeshRefused;
import padwright.geometry.mesh.Strain;
import padwright.geometry.mesh.SurfaceMesher;
import padwright.geometry.mesh.TriangleMesh;
import padwright.shape.PadShape;
import padwright.shape.TautPath;

/**
 * Lays the domed face of a pad flat and says what that strains. Where the covering will not take
 * it, seams from the corners inwards are tried and the strain that is left is worked out again.
 */
public final class CrownAnalyst {
  /** A face with less surplus a radian, mm, is as good as flat; own choice. */
  public static final double SURPLUS = 1;

  /** Triangles aimed at: the strain of a round top is then within 3 % of its closed form. */
  static final int TRIANGLES = 2500;

  /** Chords of the face's edge leave its arcs by this much at most, mm. */
  private static final double CHORD_ERROR = 0.05;

  /** Area of an even triangle is this times its edge squared. */
  private static final double EVEN = Math.sqrt(3) / 4;

  /** A corner that turns more than this, radians, is relieved by more than one seam. */
  private static final double ONE_SEAM = 0.75 * Math.PI;

  private CrownAnalyst() {}

  /** Empty where the face is as good as flat. */
  public static Optional<CrownReport> of(PadShape shape, PadSpec spec, List<CornerPlan> corners) {
    return of(shape, spec, corners, TRIANGLES);
  }

  static Optional<CrownReport> of(
      PadShape shape, PadSpec spec, List<CornerPlan> corners, int triangles) {
    TautPath taut = shape.section().taut();
    DomedTop top = DomedTop.of(shape.outline(), taut);
    if (top.surplus() < SURPLUS) {
      return Optional.empty();
    }
    if (!Offset.convex(shape.outline())) {
      return Optional.of(
          CrownReport.refused(
              top.surplus(), "the outline has a hollow, and a domed top is worked out without"));
    }
    Optional<Path> edge = top.edge();
    if (edge.isEmpty()) {
      return Optional.of(CrownReport.refused(top.surplus(), "nothing is left of the face"));
    }
    try {
      return Optional.of(report(shape, spec, corners, top, edge.get(), triangles));
    } catch (MeshRefused e) {
      return Optional.of(CrownReport.refused(top.surplus(), e.getMessage()));
    }
  }

  private static CrownReport report(
      PadShape shape,
      PadSpec spec,
      List<CornerPlan> corners,
      DomedTop top,
      Path edge,
      int triangles) {
    double size = Math.sqrt(edge.area() / (triangles * EVEN));
    TriangleMesh mesh = SurfaceMesher.mesh(edge.flattened(CHORD_ERROR), size, top::height);
    Flattening flat = Flattener.flatten(mesh);
    if (flat.refusal().isPresent()) {
      return CrownReport.refused(top.surplus(), flat.refusal().get());
    }
    Strain s = flat.strain();
    double along = spec.covering().stretchAlong();
    double across = spec.covering().stretchAcross();
    double takenAlong = along - (spec.warpAlongWidth() ? spec.stretchY() : spec.stretchX());
    double takenAcross = across - (spec.warpAlongWidth() ? spec.stretchX() : spec.stretchY());
    double stretchTaken = Math.max(0, Math.min(takenAlong, takenAcross));
    double easeTaken = spec.covering().ease();
    int least = 0;
    int most = 0;
    List<Sample> field = new ArrayList<>();
    for (int t = 0; t < s.triangleCount(); t++) {
      least = s.least(t) < s.least(least) ? t : least;
      most = s.most(t) > s.most(most) ? t : most;
      int[] v = mesh.triangle(t);
      double pulled = 1 / s.least(t) - 1;
      double eased = 1 / s.most(t) - 1;
      field.add(
          new Sample(
              plan(mesh.vertex(v[0])),
              plan(mesh.vertex(v[1])),
              plan(mesh.vertex(v[2])),
              Math.abs(pulled) >= Math.abs(eased) ? pulled : eased));
    }
    Place stretched = place(shape, corners, field.get(least), Math.max(0, 1 / s.least(least) - 1));
    Place eased = place(shape, corners, field.get(most), Math.min(0, 1 / s.most(most) - 1));
    double spare = Double.POSITIVE_INFINITY;
    for (Vec2 p : flat.outline()) {
      spare = Math.min(spare, top.endS() - top.out(p.x(), p.y()));
    }
    List<Seam> seams = new ArrayList<>();
    double leftStretched = 0;
    double leftEased = 0;
    boolean taken = stretched.strain() <= stretchTaken && -eased.strain() <= easeTaken;
    if (!taken) {
      seams.addAll(seams(top, edge, corners));
      TriangleMesh cut = mesh;
      for (Seam seam : seams) {
        cut = SeamCut.along(cut, seam.from(), seam.to());
      }
      Flattening opened = Flattener.flatten(cut);
      if (seams.isEmpty() || opened.refusal().isPresent()) {
        seams.clear();
      } else {
        leftStretched = Math.max(0, 1 / opened.strain().least() - 1);
        leftEased = Math.min(0, 1 / opened.strain().most() - 1);
      }
    }
    return new CrownReport(
        top.surplus(),
        Optional.empty(),
        s.mean(),
        stretched,
        eased,
        stretchTaken,
        easeTaken,
        spare,
        seams,
        leftStretched,
        leftEased,
        field,
        DiscreteCurvature.of(mesh).gaussBonnetGap());
  }

  private static Vec2 plan(Vec3 p) {
    return new Vec2(p.x(), p.y());
  }

  /** Named by the nearest corner, or by the nearest side where that is nearer. */
  private static Place place(PadShape shape, List<CornerPlan> corners, Sample at, double strain) {
    Vec2 p = at.a().plus(at.b()).plus(at.c()).times(1.0 / 3);
    String near = "";
    double away = Double.POSITIVE_INFINITY;
    for (int i = 0; i < shape.sideNames().size(); i++) {
      double d = shape.outline().segments().get(i).distanceTo(p);
      if (d < away - 1e-6) {
        away = d;
        near = shape.sideNames().get(i);
      }
    }
    for (CornerPlan c : corners) {
      double d = c.apex().distance(p);
      // Nearer to the corner than twice as far as to a side: the corner says more.
      if (c.turn() < ONE_SEAM && c.turn() > 0 && d <= 2 * away) {
        near = "corner " + c.name();
        away = d;
      }
    }
    return new Place(strain, p, near, away);
  }

  /** One seam at each corner, along the hip; four on a closed rim. Up to where the top is level. */
  private static List<Seam> seams(DomedTop top, Path edge, List<CornerPlan> corners) {
    List<Seam> seams = new ArrayList<>();
    Vec2 middle = edge.bounds().centre();
    for (CornerPlan c : corners) {
      if (c.turn() <= 0) {
        continue;
      }
      if (c.turn() < ONE_SEAM) {
        seams.add(seam(top, edge, c.name(), c.apex(), middle));
      } else {
        int count = (int) Math.round(c.turn() / (Math.PI / 2));
        double length = 0;
        Vec2 first = c.apex();
        for (int k = 0; k < count; k++) {
          double angle = first.minus(middle).angle() + k * 2 * Math.PI / 4;
          Vec2 far = middle.plus(Vec2.polar(angle).times(edge.bounds().width() + length));
          seams.add(seam(top, edge, c.name(), far, middle));
        }
      }
    }
    return seams;
  }

  private static Seam seam(DomedTop top, Path edge, String name, Vec2 towards, Vec2 middle) {
    Vec2 from = nearest(edge, towards, middle);
    Vec2 to = top.level().map(l -> nearest(l, from, middle)).orElse(middle);
    return new Seam(name, from, to);
  }

  private static Vec2 nearest(Path path, Vec2 p, Vec2 otherwise) {
    Vec2 best = otherwise;
    double least = Double.POSITIVE_INFINITY;
    for (Vec2 v : path.flattened(CHORD_ERROR)) {
      if (v.distance(p) < least) {
        least = v.distance(p);
        best = v;
      }
    }
    return best;
  }
}
