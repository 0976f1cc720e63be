package padwright.desk.solid;

/**
 * From where a solid is looked at. It always stands four radii of the solid away from its middle,
 * so it is never inside; nearer comes what is seen through a longer lens. Immutable; angles in
 * radians.
 *
 * @param azimuth how far round it has gone, 0 before the front, growing to the right
 * @param elevation how far up, a quarter turn over the face, minus that under the back
 * @param zoom 1 where the ball that holds the solid fills the smaller side of the picture
 * @param right how far it looks past the middle of the solid, in radii of the solid
 * @param up the same upwards in the picture
 */
public record Camera(double azimuth, double elevation, double zoom, double right, double up) {
  /** Distance from the middle of the solid, in its radii; own choice, as are the others. */
  static final double DISTANCE = 4;

  /** Half the opening of the lens at zoom 1: the ball just fits, so tan(asin(1 / distance)). */
  static final double HALF = Math.tan(Math.asin(1 / DISTANCE));

  private static final double NEAREST = 40;

  private static final double FARTHEST = 0.2;

  private static final double QUARTER = Math.PI / 2;

  /** A view is named where it is this near to it. */
  private static final double NAMED = Math.toRadians(5);

  /** Over this the face, or the back, is what is looked at. */
  private static final double STEEP = Math.toRadians(55);

  /** How much of the picture a fitted solid fills. */
  private static final double FILLED = 0.92;

  public Camera {
    azimuth = Math.IEEEremainder(azimuth, 2 * Math.PI);
    elevation = Math.max(-QUARTER, Math.min(QUARTER, elevation));
    zoom = Math.max(FARTHEST, Math.min(NEAREST, zoom));
    right = Math.max(-1, Math.min(1, right));
    up = Math.max(-1, Math.min(1, up));
  }

  /** A view that has a name. */
  public enum View {
    /** Over the front, a little to the right: where a part is first seen from. */
    CORNER(Math.toRadians(28), Math.toRadians(32)),
    FACE(0, QUARTER),
    FRONT(0, 0),
    /** As if the part were turned over sideways, its back edge still away from the maker. */
    BACK(Math.PI, -QUARTER),
    /** The same seen aslant. */
    BACK_CORNER(Math.toRadians(152), Math.toRadians(-40));

    private final double azimuth;
    private final double elevation;

    View(double azimuth, double elevation) {
      this.azimuth = azimuth;
      this.elevation = elevation;
    }
  }

  public static Camera of(View view) {
    return new Camera(view.azimuth, view.elevation, 1, 0, 0);
  }

  /** Turned about the solid, at the same zoom. */
  public Camera turned(double round, double over) {
    return new Camera(azimuth + round, elevation + over, zoom, right, up);
  }

  /** Brought nearer by a factor. */
  public Camera zoomed(double factor) {
    return new Camera(azimuth, elevation, zoom * factor, right, up);
  }

  /** Moved so that what is seen moves by so many pixels to the right and down. */
  public Camera panned(double dx, double dy, int width, int height) {
    double pixel = DISTANCE / Projection.lens(zoom, width, height);
    return new Camera(azimuth, elevation, zoom, right - dx * pixel, up + dy * pixel);
  }

  /** Looking from a named place, at the same zoom, at the middle. */
  public Camera at(View view) {
    return new Camera(view.azimuth, view.elevation, zoom, 0, 0);
  }

  /** The same direction, as near as shows the whole solid in the middle of a picture. */
  public Camera fitted(Solid solid, int width, int height) {
    Camera one = new Camera(azimuth, elevation, 1, 0, 0);
    double[] box = new Projection(one, solid, width, height).box(solid);
    double wide = Math.max(Math.abs(box[0] - width / 2.0), Math.abs(box[2] - width / 2.0));
    double high = Math.max(Math.abs(box[1] - height / 2.0), Math.abs(box[3] - height / 2.0));
    double factor = Math.min(width / 2.0 / wide, height / 2.0 / high);
    return one.zoomed(FILLED * factor);
  }

  /** From where it looks, in words: "from the front and above". */
  public String words() {
    if (elevation > QUARTER - NAMED) {
      return "from above the face";
    }
    if (elevation < -QUARTER + NAMED) {
      return "from under the back of the board";
    }
    int side = Math.floorMod((int) Math.round(azimuth / QUARTER), 4);
    String from = new String[] {"the front", "the right", "the back edge", "the left"}[side];
    if (elevation > STEEP) {
      return "from high above " + from;
    }
    if (elevation < -STEEP) {
      return "from far below " + from;
    }
    return "from "
        + from
        + (elevation > NAMED ? " and above" : elevation < -NAMED ? " and below" : "");
  }
}
