package padwright.desk.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.desk.edit.PartField.Choice;
import padwright.desk.edit.PartField.Kind;
import padwright.material.Board;
import padwright.material.Catalogue;

/**
 * Every field of a part, in groups: what there is to fill in follows from the part itself. Places
 * are those of the job file, so each field is described in its description too.
 */
public final class PartFields {
  /** Member of the part as such: name, kind, how many. */
  public static final String PART = "part";

  public static final String BASE = "base";
  public static final String WADDING = "wadding";
  public static final String EDGE = "edge";
  public static final String COVER = "cover";
  public static final String CORNERS = "corners";
  public static final String STAPLES = "staples";
  public static final String HOST = "host";
  public static final String DUST_COVER = "dustCover";

  /** What is chosen so that each corner has a treatment of its own. */
  public static final String EACH = "each";

  /** What is chosen where there is none of something. */
  public static final String NONE = "none";

  private static final double MM = 1;
  private static final double HALF = 0.5;
  private static final double FIVE = 5;

  private final WrappedPad pad;
  private final Catalogue catalogue;

  private PartFields(WrappedPad pad, Catalogue catalogue) {
    this.pad = pad;
    this.catalogue = catalogue;
  }

  /** All groups, in the order a part is built: from the part as such over the section outwards. */
  public static List<FieldGroup> of(WrappedPad pad, Catalogue catalogue) {
    PartFields f = new PartFields(pad, catalogue);
    List<FieldGroup> groups = new ArrayList<>();
    groups.add(f.part());
    groups.add(f.base());
    for (int i = 0; i < pad.foam().size(); i++) {
      groups.add(f.foam(i));
    }
    groups.add(f.wadding());
    groups.add(new FieldGroup(EDGE, "Edge", edge("", pad.edge(), false)));
    groups.add(f.cover());
    groups.add(f.corners());
    groups.add(f.staples());
    groups.add(f.host());
    groups.add(f.dustCover());
    groups.addAll(new PartListFields(pad).all());
    return groups;
  }

  /** The field at a place; empty where the part has none there. */
  public static Optional<PartField> at(WrappedPad pad, Catalogue catalogue, String place) {
    return of(pad, catalogue).stream()
        .flatMap(g -> g.fields().stream())
        .filter(f -> f.place().equals(place))
        .findFirst();
  }

  static <E extends Enum<E>> List<Choice> words(E[] values, char between) {
    return Arrays.stream(values)
        .map(v -> v.name().toLowerCase(Locale.ROOT))
        .map(v -> new Choice(v.replace('_', between), v.replace('_', between)))
        .toList();
  }

  private static List<Choice> plain(String... values) {
    return Stream.of(values).map(v -> new Choice(v, v)).toList();
  }

  private FieldGroup part() {
    List<PartField> f = new ArrayList<>();
    f.add(new PartField("name", "Name", Kind.WORDS, false, List.of(), 0));
    f.add(new PartField("id", "Short name for files", Kind.WORDS, false, List.of(), 0));
    f.add(PartField.choice("kind", "Kind", false, words(WrappedPad.Kind.values(), ' ')));
    f.add(new PartField("quantity", "How many as drawn", Kind.COUNT, false, List.of(), 1));
    f.add(new PartField("mirrored", "How many mirrored", Kind.COUNT, true, List.of(), 1));
    f.add(PartField.choice("front", "Front edge", true, words(WrappedPad.Side.values(), ' ')));
    return new FieldGroup(PART, "Part", f);
  }

  private FieldGroup base() {
    List<PartField> f = new ArrayList<>(outline("base.outline", pad.base().outline(), true));
    f.add(
        PartField.choice(
            "base.size", "These are sizes of the", true, words(SizeMeaning.values(), ' ')));
    OutlineShape outline = pad.base().outline();
    if (outline instanceof Rectangle || outline instanceof Trapezoid) {
      for (WrappedPad.Side s : WrappedPad.Side.values()) {
        String side = s.name().toLowerCase(Locale.ROOT);
        f.add(
            PartField.choice(
                "base.sides." + side,
                "What stands beside the " + side,
                true,
                words(WrappedPad.Neighbour.values(), '-')));
      }
    }
    f.add(PartField.length("base.clearance", "Gap kept on a keep-clear side", true, HALF));
    f.add(
        PartField.choice(
            "base.board",
            "Board",
            false,
            catalogue.boards().stream().map(b -> new Choice(b.id(), b.name())).toList()));
    f.add(PartField.length("base.thickness", "Board thickness", false, MM));
    f.add(PartField.length("base.measured", "Thickness by caliper", true, 0.1));
    f.add(PartField.length("base.backArris", "Back arris rounded to", true, HALF));
    return new FieldGroup(BASE, "Base board", f);
  }

  /** Sizes of an outline; of one drawn by its points there are none here. */
  static List<PartField> outline(String place, OutlineShape shape, boolean withRadius) {
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(
            place, "Outline", false, plain("rectangle", "trapezoid", "circle", "ellipse", "path")));
    if (shape instanceof Rectangle r) {
      f.add(PartField.length(place + ".rectangle.length", "Length", false, FIVE));
      f.add(PartField.length(place + ".rectangle.width", "Width", false, FIVE));
      if (withRadius && r.radii().stream().distinct().count() > 1) {
        String[] corners = {"front left", "front right", "back right", "back left"};
        for (int i = 0; i < corners.length; i++) {
          f.add(
              PartField.length(
                  place + ".rectangle.radii[" + i + "]", "Radius " + corners[i], false, FIVE));
        }
      } else {
        f.add(PartField.length(place + ".rectangle.radius", "Corner radius", true, FIVE));
      }
    } else if (shape instanceof Trapezoid) {
      f.add(PartField.length(place + ".trapezoid.front", "Front", false, FIVE));
      f.add(PartField.length(place + ".trapezoid.back", "Back", false, FIVE));
      f.add(PartField.length(place + ".trapezoid.depth", "Depth", false, FIVE));
    } else if (shape instanceof Circle) {
      f.add(PartField.length(place + ".circle.diameter", "Diameter", false, FIVE));
    } else if (shape instanceof Ellipse) {
      f.add(PartField.length(place + ".ellipse.length", "Length", false, FIVE));
      f.add(PartField.length(place + ".ellipse.width", "Width", false, FIVE));
    }
    return f;
  }

  private FieldGroup foam(int i) {
    String place = "foam[" + i + "]";
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(
            place + ".foam",
            "Foam",
            false,
            catalogue.foams().stream().map(x -> new Choice(x.id(), x.name())).toList()));
    f.add(PartField.length(place + ".thickness", "Thickness", false, MM));
    f.add(PartField.length(place + ".overhang", "Beyond the base", true, MM));
    f.add(
        new PartField(
            place + ".crown", "Crown, set in under the next", Kind.FLAG, true, List.of(), 0));
    return new FieldGroup(
        place, "Foam layer " + (i + 1), f, Optional.of(new FieldGroup.Entry("foam", i, 1)));
  }

  private FieldGroup wadding() {
    List<PartField> f = new ArrayList<>();
    List<Choice> rows = new ArrayList<>(List.of(new Choice(NONE, "none")));
    catalogue.waddings().forEach(w -> rows.add(new Choice(w.id(), w.name())));
    f.add(PartField.choice("wadding.wadding", "Wadding", true, rows));
    if (pad.wadding().isPresent()) {
      f.add(PartField.length("wadding.thickness", "Pressed thickness", true, HALF));
      f.add(PartField.choice("wadding.over", "Laid over", true, plain("top", "top and sides")));
    }
    return new FieldGroup(WADDING, "Wadding", f);
  }

  static List<PartField> edge(String before, EdgeShape shape, boolean optional) {
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(
            before + "edge",
            "Top edge of the foam",
            optional,
            plain("square", "round", "bevel", "full round")));
    if (shape instanceof EdgeShape.Round) {
      f.add(PartField.length(before + "edge.round", "Rounded to", false, MM));
    } else if (shape instanceof EdgeShape.Bevel) {
      f.add(PartField.length(before + "edge.bevel", "Bevelled by", false, MM));
    }
    return f;
  }

  private FieldGroup cover() {
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(
            "cover.covering",
            "Covering",
            false,
            catalogue.coverings().stream().map(c -> new Choice(c.id(), c.name())).toList()));
    f.add(PartField.length("cover.thickness", "Thickness", true, 0.1));
    f.add(PartField.length("cover.turnUnder", "Turn-under", true, MM));
    f.add(PartField.length("cover.grip", "Grip beyond the trim line", true, MM));
    f.add(
        new PartField(
            "cover.stretchAllowance.along",
            "Taken off for stretch along the warp, %",
            Kind.PERCENT,
            true,
            List.of(),
            HALF));
    f.add(
        new PartField(
            "cover.stretchAllowance.across",
            "Taken off across the warp, %",
            Kind.PERCENT,
            true,
            List.of(),
            HALF));
    f.add(PartField.choice("cover.warp", "Warp runs along the", true, plain("length", "width")));
    return new FieldGroup(COVER, "Covering", f);
  }

  private FieldGroup corners() {
    List<PartField> f = new ArrayList<>();
    List<Choice> all = new ArrayList<>(words(Treatment.values(), ' '));
    if (cornerCount(pad) > 0) {
      all.add(new Choice(EACH, "each its own"));
    }
    f.add(PartField.choice("corners.treatment", "Corners", true, all));
    if (pad.corners().treatments().size() > 1) {
      for (int i = 0; i < pad.corners().treatments().size(); i++) {
        f.add(
            PartField.choice(
                "corners.each[" + i + "]",
                "Corner " + (i + 1),
                false,
                words(Treatment.values(), ' ')));
      }
    }
    f.add(PartField.length("corners.reliefStop", "Relief cuts stop short by", true, MM));
    f.add(PartField.length("corners.pleatDepth", "Depth of a pleat", true, MM));
    return new FieldGroup(CORNERS, "Corners", f);
  }

  private FieldGroup staples() {
    List<PartField> f = new ArrayList<>();
    f.add(
        PartField.choice(
            "staples.staple",
            "Staple",
            true,
            catalogue.staples().stream().map(s -> new Choice(s.id(), s.name())).toList()));
    f.add(PartField.length("staples.leg", "Leg", true, MM));
    f.add(PartField.length("staples.spacing", "Spacing", true, MM));
    f.add(PartField.length("staples.edgeDistance", "From the edge", true, MM));
    f.add(
        new PartField(
            "staples.pull", "Pull of the covering, N per mm", Kind.NUMBER, true, List.of(), 0.1));
    return new FieldGroup(STAPLES, "Staples", f);
  }

  private FieldGroup host() {
    List<PartField> f = new ArrayList<>();
    f.add(PartField.choice("host.fixing", "Held by", true, words(Fixing.values(), ' ')));
    if (pad.host().fixing() != Fixing.NONE) {
      f.add(
          PartField.choice(
              "host.finish",
              "Surface it is fixed to",
              true,
              words(WrappedPad.Finish.values(), ' ')));
    }
    if (pad.host().fixing() == Fixing.SCREWS) {
      f.add(PartField.length("host.thickness", "Thickness the screw passes", true, MM));
      f.add(
          PartField.choice(
              "host.screw",
              "Screw",
              true,
              catalogue.screws().stream().map(s -> new Choice(s.id(), s.name())).toList()));
      f.add(PartField.length("host.screwLength", "Screw length", true, MM));
    }
    return new FieldGroup(HOST, "Fixing", f);
  }

  private FieldGroup dustCover() {
    List<PartField> f = new ArrayList<>();
    f.add(PartField.choice(DUST_COVER, "Dust cover", true, plain("yes", "no")));
    if (pad.dustCover().wanted()) {
      f.add(PartField.length("dustCover.inset", "Inside the base's edge", true, MM));
      f.add(PartField.length("dustCover.turn", "Its own edge turned", true, MM));
    }
    return new FieldGroup(DUST_COVER, "Dust cover", f);
  }

  /** How many corners can each have a treatment of their own; a round outline has none. */
  static int cornerCount(WrappedPad pad) {
    OutlineShape outline = pad.base().outline();
    if (outline instanceof OutlineShape.FreePath f) {
      return f.points().size();
    }
    return outline instanceof Rectangle || outline instanceof Trapezoid ? 4 : 0;
  }

  /** Thicknesses that the board is sold in, thinnest first. */
  static List<Double> thicknesses(Catalogue catalogue, String board) {
    return catalogue
        .board(board)
        .map(b -> b.thicknesses().stream().map(Board.Thickness::nominal).sorted().toList())
        .orElse(List.of());
  }
}
