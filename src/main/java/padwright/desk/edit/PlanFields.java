package padwright.desk.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartField.Choice;
import padwright.geometry.Vec2;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * The fields of one thing on the plan. Those of points, legs and sides have places of their own,
 * which stay the same whatever run a side comes to be in; all others those of the job file.
 */
public final class PlanFields {
  /** What the place of a field of a side's own settings begins with. */
  public static final String SIDE = "side.";

  /** Whether a side runs straight, as an arc or as a curve. */
  public static final String WAY = "leg.way";

  private static final String LENGTH = "leg.length";
  private static final String RISE = "leg.rise";
  private static final String RADIUS = "leg.radius";
  private static final String CONTROL = "leg.control";
  private static final String X = "point.x";
  private static final String Y = "point.y";
  private static final double STEP = 1;

  /** A side that is first made an arc rises by this share of its length: enough to be seen. */
  private static final double FIRST_RISE = 0.1;

  private static final double STRAIGHT = 1e-6;

  private final PartEdit edit;
  private final WrappedPad pad;
  private final PlanItem item;

  public PlanFields(PartEdit edit, WrappedPad pad, PlanItem item) {
    this.edit = edit;
    this.pad = pad;
    this.item = item;
  }

  public List<PartField> fields() {
    if (item instanceof PlanItem.Point) {
      return List.of(
          PartField.length(X, "To the right", false, STEP),
          PartField.length(Y, "To the back", false, STEP));
    } else if (item instanceof PlanItem.Side s) {
      List<PartField> f = new ArrayList<>(drawn() ? leg(s.number()) : sizes(s.name()));
      for (PartField own : RunEdit.fields(pad, s.name())) {
        f.add(at(SIDE + own.place().substring(own.place().indexOf('.') + 1), own));
      }
      return f;
    } else if (item instanceof PlanItem.Member m) {
      return new PartListFields(pad)
          .all().stream()
              .filter(g -> g.member().equals(m.member()))
              .findFirst()
              .map(FieldGroup::fields)
              .orElse(List.of());
    }
    return PartFields.outline("base.outline", pad.base().outline(), true);
  }

  private static PartField at(String place, PartField f) {
    return new PartField(place, f.label(), f.kind(), f.optional(), f.choices(), f.step());
  }

  private boolean drawn() {
    return pad.base().outline() instanceof FreePath;
  }

  private List<PartField> leg(int number) {
    Leg leg = path().points().get(number).leg();
    List<Choice> ways = new ArrayList<>();
    ways.add(new Choice("straight", "straight"));
    ways.add(new Choice("arc", "an arc"));
    if (leg instanceof Leg.Cubic) {
      ways.add(new Choice("curve", "a curve"));
    }
    List<PartField> f = new ArrayList<>();
    f.add(PartField.choice(WAY, "Runs as", false, ways));
    String length = leg instanceof Leg.Straight ? "Length" : "From end to end";
    f.add(PartField.length(LENGTH, length, false, STEP));
    if (leg instanceof Leg.Cubic) {
      f.add(PartField.length(CONTROL + "1x", "First control to the right", false, STEP));
      f.add(PartField.length(CONTROL + "1y", "to the back", false, STEP));
      f.add(PartField.length(CONTROL + "2x", "Second control to the right", false, STEP));
      f.add(PartField.length(CONTROL + "2y", "to the back", false, STEP));
    } else {
      f.add(PartField.length(RISE, "Bows out by", false, STEP));
    }
    if (leg instanceof Leg.Arc) {
      f.add(PartField.length(RADIUS, "Radius", false, STEP));
    }
    return f;
  }

  /** The size that a side of an outline with sizes has. */
  private List<PartField> sizes(String side) {
    OutlineShape shape = pad.base().outline();
    boolean lengthwise = side.equals("front") || side.equals("back");
    String own =
        shape instanceof Rectangle
            ? lengthwise ? "rectangle.length" : "rectangle.width"
            : shape instanceof Trapezoid ? "trapezoid." + (lengthwise ? side : "depth") : "";
    return PartFields.outline("base.outline", shape, true).stream()
        .filter(f -> f.place().equals("base.outline." + own))
        .toList();
  }

  private FreePath path() {
    return new OutlineEdit(edit, pad).path();
  }

  private Vec2 point(int number) {
    List<OutlineShape.Point> points = path().points();
    return points.get(number % points.size()).at();
  }

  private int number() {
    return item instanceof PlanItem.Side s ? s.number() : ((PlanItem.Point) item).number();
  }

  /** A length that is no field of the job file, mm; empty where the field is none. */
  public Optional<Double> own(PartField field) {
    return switch (field.place()) {
      case X -> Optional.of(point(number()).x());
      case Y -> Optional.of(point(number()).y());
      case LENGTH -> Optional.of(point(number()).distance(point(number() + 1)));
      case RISE -> Optional.of(rise());
      case RADIUS -> Optional.of(radius());
      default ->
          field.place().startsWith(CONTROL)
              ? Optional.of(lengthwise(field) ? control(field).x() : control(field).y())
              : Optional.empty();
    };
  }

  private double bulge() {
    return path().points().get(number()).leg() instanceof Leg.Arc a ? a.bulge() : 0;
  }

  private double chord() {
    return point(number()).distance(point(number() + 1));
  }

  /** How far the leg's middle lies out of the part from the line between its ends. */
  private double rise() {
    double sign = new OutlineEdit(edit, pad).anticlockwise() ? 1 : -1;
    return bulge() == 0 ? 0 : sign * bulge() * chord() / 2;
  }

  /** Of an arc over half a chord h that rises by b h it is h (1 + b^2) / 2b. */
  private double radius() {
    double b = Math.abs(bulge());
    return chord() / 2 * (1 + b * b) / (2 * b);
  }

  /** The field of the job file that a setting of a side stands for. */
  private PartField inRun(PartField field) {
    String name = field.place().substring(SIDE.length());
    return RunEdit.fields(pad, side()).stream()
        .filter(f -> f.place().endsWith("." + name))
        .findFirst()
        .orElseThrow();
  }

  private String side() {
    return ((PlanItem.Side) item).name();
  }

  /** What a field holds, as it could be typed. */
  public String shown(PartField field) {
    if (field.place().equals(WAY)) {
      Leg leg = path().points().get(number()).leg();
      return leg instanceof Leg.Straight ? "straight" : leg instanceof Leg.Arc ? "arc" : "curve";
    } else if (field.place().startsWith(SIDE)) {
      return edit.shown(pad, inRun(field));
    }
    return own(field)
        .map(mm -> PartEdit.shown(mm, edit.plain() == LengthUnit.MM))
        .orElseGet(() -> edit.shown(pad, field));
  }

  /**
   * The part with what was typed into a field.
   *
   * @throws InputRefused as the reader of job files says it
   */
  public WrappedPad typed(PartField field, String typed) {
    String text = typed.strip();
    if (text.equals(shown(field))) {
      // What is shown may be rounded; to leave a field as it is changes nothing.
      return pad;
    }
    if (field.place().equals(WAY)) {
      return way(text);
    } else if (field.place().startsWith(SIDE)) {
      return new RunEdit(edit, pad).typed(side(), inRun(field), text);
    } else if (own(field).isPresent()) {
      return set(field, TypedLength.parse(text, edit.plain()));
    }
    return edit.typed(pad, field, text);
  }

  private WrappedPad way(String way) {
    return switch (way) {
      case "straight" -> new OutlineEdit(edit, pad).straight(number());
      case "arc" -> risen(chord() * FIRST_RISE);
      default -> pad;
    };
  }

  /**
   * The part with a length of its own set, mm.
   *
   * @throws InputRefused where the outline cannot be so
   */
  public WrappedPad set(PartField field, double mm) {
    OutlineEdit outline = new OutlineEdit(edit, pad);
    Vec2 at = point(number());
    return switch (field.place()) {
      case X -> outline.moved(number(), new Vec2(mm, at.y()));
      case Y -> outline.moved(number(), new Vec2(at.x(), mm));
      case LENGTH -> outline.length(number(), positive(mm));
      case RISE -> risen(mm);
      case RADIUS -> outline.radius(number(), mm);
      default -> {
        Vec2 c = control(field);
        Vec2 to = lengthwise(field) ? new Vec2(mm, c.y()) : new Vec2(c.x(), mm);
        yield outline.control(number(), second(field), to);
      }
    };
  }

  private static boolean second(PartField field) {
    return field.place().startsWith(CONTROL + "2");
  }

  private static boolean lengthwise(PartField field) {
    return field.place().endsWith("x");
  }

  private Vec2 control(PartField field) {
    Leg.Cubic curve = (Leg.Cubic) path().points().get(number()).leg();
    return second(field) ? curve.second() : curve.first();
  }

  private double positive(double mm) {
    if (mm > 0) {
      return mm;
    }
    Units units = edit.plain() == LengthUnit.MM ? Units.MM : Units.INCH;
    throw new InputRefused(
        "",
        0,
        "base.outline",
        "a side cannot be " + FieldWords.of(mm, units) + " long",
        "Give a length above 0, or take one of its points out");
  }

  private WrappedPad risen(double mm) {
    Vec2 a = point(number());
    Vec2 b = point(number() + 1);
    OutlineEdit outline = new OutlineEdit(edit, pad);
    Vec2 right = b.minus(a).unit().right();
    Vec2 outward = outline.anticlockwise() ? right : right.times(-1);
    return outline.bent(number(), a.midpoint(b).along(outward, mm), STRAIGHT);
  }
}
