package padwright.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import padwright.drawing.Chain.Source;
import padwright.drawing.DxfGroups.Entity;
import padwright.drawing.DxfGroups.Group;
import padwright.measure.LengthUnit;

/** Reads the strokes of an ASCII DXF file, R12 and later: lines, arcs, circles and polylines. */
final class DxfReader {
  /** $INSUNITS to mm; 0 is no unit. */
  private static final Map<Integer, Double> UNITS =
      Map.of(1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0, 8, 25.4e-6, 9, 25.4e-3, 14, 100.0);

  /** A 3D polyline, a mesh or a polyface (flags 8, 16, 64). */
  private static final int SOLID = 8 | 16 | 64;

  private static final int FROZEN = 1;

  private final Budget budget;
  private final Tally tally;
  private final Optional<LengthUnit> plain;
  private final DxfGroups groups;
  private final Set<String> off = new HashSet<>();
  private final List<Chain> chains = new ArrayList<>();
  private double unit = 1;
  private String scale = "";

  DxfReader(Budget budget, Tally tally, Optional<LengthUnit> plain) {
    this.budget = budget;
    this.tally = tally;
    this.plain = plain;
    this.groups = new DxfGroups(budget);
  }

  String scale() {
    return scale;
  }

  List<Chain> read(String text) {
    List<Entity> all = groups.read(text);
    units(all);
    String section = "";
    for (int i = 0; i < all.size(); i++) {
      Entity e = all.get(i);
      if (e.kind().equals("SECTION")) {
        section = e.text(2, "");
      } else if (e.kind().equals("ENDSEC")) {
        section = "";
      } else if (section.equals("TABLES") && e.kind().equals("LAYER")) {
        layer(e);
      } else if (section.equals("ENTITIES")) {
        i += entity(e, all.subList(i + 1, all.size()));
      }
    }
    if (!section.isEmpty()) {
      throw budget.refuse(
          all.get(all.size() - 1).line(),
          "the section " + SvgAttributes.shown(section) + " has no end: the file is cut off",
          "Save the drawing again as DXF");
    }
    return chains;
  }

  /** The header names a variable with code 9 and its value in the group after it. */
  private void units(List<Entity> all) {
    int code = 0;
    for (Entity e : all) {
      boolean header = e.kind().equals("SECTION") && e.text(2, "").equals("HEADER");
      List<Group> list = header ? e.groups() : List.of();
      for (int i = 0; i + 1 < list.size(); i++) {
        if (list.get(i).code() == 9 && list.get(i).value().equals("$INSUNITS")) {
          code = (int) groups.number(list.get(i + 1));
          known(code, list.get(i + 1));
        }
      }
    }
    if (code != 0) {
      unit = UNITS.get(code);
      scale = "1 unit is " + shown(unit) + " mm (the file's $INSUNITS)";
    } else if (plain.isPresent()) {
      unit = plain.get().millimetres().doubleValue();
      scale = "1 unit is 1 " + plain.get().mark() + ", as you say";
    } else {
      scale = "1 unit is taken as 1 mm: the file names no unit";
    }
  }

  private void known(int code, Group group) {
    if (code != 0 && !UNITS.containsKey(code)) {
      throw budget.refuse(
          group.line(),
          "the drawing's unit ($INSUNITS " + code + ") is none that a pad is drawn in",
          "Save the drawing in mm or inches");
    }
  }

  private static String shown(double mm) {
    return BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString();
  }

  private void layer(Entity e) {
    boolean dark = groups.number(e, 62, 7) < 0;
    if (dark || (groups.flags(e, 70) & FROZEN) != 0) {
      off.add(e.text(2, "").toLowerCase(Locale.ROOT));
    }
  }

  /** Takes one entity; how many of those that follow belong to it. */
  private int entity(Entity e, List<Entity> following) {
    Source source = new Source(e.kind(), e.text(8, ""), e.line(), budget.element(e.line()));
    int own = own(e, following);
    String why = leftBecause(e);
    if (why == null) {
      Chain chain = chain(e, following.subList(0, own), source);
      if (chain != null) {
        chains.add(chain);
      } else {
        tally.left(source, "draws nothing");
      }
    } else {
      tally.left(source, why);
    }
    return own;
  }

  /** Vertices and attributes up to the end of their sequence. */
  private int own(Entity e, List<Entity> following) {
    boolean attributes = e.kind().equals("INSERT") && groups.flags(e, 66) == 1;
    if (!e.kind().equals("POLYLINE") && !attributes) {
      return 0;
    }
    for (int i = 0; i < following.size(); i++) {
      String kind = following.get(i).kind();
      if (kind.equals("SEQEND")) {
        return i + 1;
      }
      if (!kind.equals("VERTEX") && !kind.equals("ATTRIB")) {
        break;
      }
      budget.element(following.get(i).line());
    }
    throw budget.refuse(
        e.line(), "this " + e.kind() + " has no SEQEND", "Save the drawing again as DXF");
  }

  /** Why an entity is left: empty where its kind says it; null where it is read. */
  private String leftBecause(Entity e) {
    boolean known =
        switch (e.kind()) {
          case "LINE", "ARC", "CIRCLE", "POLYLINE", "LWPOLYLINE" -> true;
          default -> false;
        };
    if (!known) {
      return "";
    }
    if (groups.flags(e, 67) == 1) {
      return "in paper space";
    }
    if (groups.flags(e, 60) == 1) {
      return "invisible";
    }
    // Names of layers are the same in capitals and small letters.
    if (off.contains(e.text(8, "").toLowerCase(Locale.ROOT))) {
      return "its layer is off";
    }
    DxfShapes shapes = shapes();
    boolean solid = e.kind().equals("POLYLINE") && (groups.flags(e, 70) & SOLID) != 0;
    boolean flat = e.kind().equals("LINE") ? shapes.flat(e) : shapes.inPlane(e);
    return solid || !flat ? "not flat" : null;
  }

  private DxfShapes shapes() {
    return new DxfShapes(groups, unit, budget);
  }

  private Chain chain(Entity e, List<Entity> own, Source source) {
    DxfShapes shapes = shapes();
    return switch (e.kind()) {
      case "LINE" -> shapes.line(e, source);
      case "ARC" -> shapes.arc(e, source, false);
      case "CIRCLE" -> shapes.arc(e, source, true);
      case "LWPOLYLINE" -> shapes.light(e, source);
      default -> shapes.heavy(e, own.subList(0, own.size() - 1), source);
    };
  }
}
