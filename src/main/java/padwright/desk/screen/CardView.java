package padwright.desk.screen;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.AmbientLight;
import javafx.scene.DirectionalLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.transform.Affine;
import javafx.scene.transform.MatrixType;
import padwright.desk.solid.Body;
import padwright.desk.solid.Camera;
import padwright.desk.solid.LineBars;
import padwright.desk.solid.Opening;
import padwright.desk.solid.Palette;
import padwright.desk.solid.Projection;
import padwright.desk.solid.Shadow;
import padwright.desk.solid.Solid;
import padwright.desk.solid.SolidPainter;

/** The solid drawn by the graphics card, from the same camera and in the same light. */
final class CardView implements SolidView {
  private final Group bodies = new Group();
  private final PerspectiveCamera eye = new PerspectiveCamera(true);
  private final Affine place = new Affine();
  private final SubScene scene;
  private final Map<Body, Group> made = new HashMap<>();
  private Solid shown;
  private Palette palette;

  CardView() {
    bodies.getTransforms().add(place);
    DirectionalLight key = new DirectionalLight(Color.gray(SolidPainter.KEY));
    key.setDirection(
        new javafx.geometry.Point3D(
            -SolidPainter.LIGHT_X, SolidPainter.LIGHT_Y, SolidPainter.LIGHT_Z));
    DirectionalLight along = new DirectionalLight(Color.gray(SolidPainter.VIEW));
    along.setDirection(new javafx.geometry.Point3D(0, 0, 1));
    Group root = new Group(bodies, new AmbientLight(Color.gray(SolidPainter.ROUND)), key, along);
    scene = new SubScene(root, 1, 1, true, SceneAntialiasing.BALANCED);
    scene.setCamera(eye);
  }

  @Override
  public Node node() {
    return scene;
  }

  @Override
  public void show(
      Solid solid,
      Opening.Stage stage,
      Camera camera,
      Palette colours,
      double width,
      double height) {
    blank(colours, width, height);
    if (solid != shown || !colours.equals(palette)) {
      made.clear();
      shown = solid;
      palette = colours;
    }
    bodies
        .getChildren()
        .setAll(
            stage.bodies().stream()
                .map(b -> made.computeIfAbsent(b, own -> group(own, solid.radius())))
                .toList());
    Projection projection = new Projection(camera, solid, (int) width, (int) height);
    place.setToTransform(projection.matrix(), MatrixType.MT_3D_3x4, 0);
    eye.setVerticalFieldOfView(height <= width);
    eye.setFieldOfView(Math.toDegrees(Projection.opening(camera)));
    eye.setNearClip(solid.radius());
    eye.setFarClip(10 * solid.radius());
  }

  @Override
  public void blank(Palette colours, double width, double height) {
    scene.setWidth(width);
    scene.setHeight(height);
    scene.setFill(colour(colours.background()));
    bodies.getChildren().clear();
  }

  private Group group(Body body, double radius) {
    MeshView faces = view(body.floats(), body.normals(), body.triangles(), palette.of(body));
    LineBars bars = LineBars.of(body, radius);
    MeshView lines = view(bars.points(), bars.normals(), bars.triangles(), palette.line());
    Shadow grown = Shadow.of(body, radius);
    MeshView outline = view(grown.points(), grown.normals(), grown.triangles(), palette.line());
    outline.setCullFace(CullFace.FRONT);
    return new Group(outline, faces, lines);
  }

  private static MeshView view(float[] points, float[] normals, int[] triangles, int argb) {
    TriangleMesh mesh = new TriangleMesh(javafx.scene.shape.VertexFormat.POINT_NORMAL_TEXCOORD);
    mesh.getPoints().setAll(points);
    mesh.getNormals().setAll(normals);
    mesh.getTexCoords().setAll(0, 0);
    int[] faces = new int[3 * triangles.length];
    for (int i = 0; i < triangles.length; i++) {
      faces[3 * i] = triangles[i];
      faces[3 * i + 1] = i;
    }
    mesh.getFaces().setAll(faces);
    MeshView view = new MeshView(mesh);
    view.setMaterial(new PhongMaterial(colour(argb)));
    view.setCullFace(CullFace.BACK);
    return view;
  }

  private static Color colour(int argb) {
    return Color.rgb(argb >> 16 & 255, argb >> 8 & 255, argb & 255);
  }
}
