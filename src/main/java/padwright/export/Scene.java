package padwright.export;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;

/**
 * A small picture of a corner in space, by parallel projection: the corner points at the viewer,
 * who stands outside and above. Seen from the back, the pad is first turned over about the line
 * that points at the viewer. What is drawn later hides what is drawn earlier.
 */
final class Scene {
  private final Vec2 apex;
  private final Vec2 towards;
  private final boolean back;
  private final double sin;
  private final double cos;
  private final List<Item> items = new ArrayList<>();
  private final List<Named> names = new ArrayList<>();

  private record Named(Vec2 at, String text) {}

  /**
   * @param towards the plan direction that points at the viewer
   * @param elevation of the viewer over the plane of the base, radians
   */
  Scene(Vec2 apex, Vec2 towards, boolean back, double elevation) {
    this.apex = apex;
    this.towards = towards;
    this.back = back;
    this.sin = Math.sin(elevation);
    this.cos = Math.cos(elevation);
  }

  /** Straight down on the face: the flat cover. */
  static Scene flat(Vec2 apex, Vec2 towards) {
    return new Scene(apex, towards, false, Math.PI / 2);
  }

  Vec2 project(Vec3 p) {
    Vec2 q = new Vec2(p.x(), p.y()).minus(apex);
    double across = q.dot(towards.left());
    double up = p.z() * cos;
    double near = q.dot(towards) * sin;
    return back ? new Vec2(-across, -up - near) : new Vec2(across, up - near);
  }

  void face(double grey, List<Vec3> corners) {
    items.add(new Fill(Path.polygon(corners.stream().map(this::project).toList()), grey));
  }

  void line(LineStyle style, List<Vec3> points) {
    items.add(new Stroke(Path.polyline(points.stream().map(this::project).toList()), style));
  }

  /** A face with its edge drawn. */
  void sheet(double grey, List<Vec3> corners) {
    face(grey, corners);
    List<Vec3> ring = new ArrayList<>(corners);
    ring.add(corners.get(0));
    line(LineStyle.SOLID, ring);
  }

  void name(Vec3 at, String text) {
    names.add(new Named(project(at), text));
  }

  /** The picture fitted into a box, keeping its proportions. */
  List<Item> fitted(Bounds room) {
    Bounds b = null;
    for (Item i : items) {
      Bounds here = SectionDrawing.bounds(i);
      b = b == null ? here : b.union(here);
    }
    if (b == null) {
      return List.of();
    }
    double k = Math.min(room.width() / b.width(), room.height() / b.height());
    Vec2 shift = room.centre().minus(b.centre().times(k));
    List<Item> out = new ArrayList<>();
    for (Item i : items) {
      if (i instanceof Fill f) {
        out.add(new Fill(f.path().scaled(k, k, 0).translated(shift), f.grey()));
      } else if (i instanceof Stroke s) {
        out.add(new Stroke(s.path().scaled(k, k, 0).translated(shift), s.style()));
      }
    }
    for (Named n : names) {
      Text t = Sheet.centred(n.at.times(k).plus(shift), Lettering.NOTE, 0, n.text);
      out.add(new Fill(plate(Lettering.box(t)), 1));
      out.add(t);
    }
    return out;
  }

  private static Path plate(Box b) {
    Box g = b.grown(0.4);
    return Path.polygon(g.at(-0.5, -0.5), g.at(0.5, -0.5), g.at(0.5, 0.5), g.at(-0.5, 0.5));
  }
}
