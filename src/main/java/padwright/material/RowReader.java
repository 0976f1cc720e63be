package padwright.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import padwright.json.Node;

/** Turns the rows of a catalogue file into records. Every limit here is far outside the trade. */
final class RowReader {
  private static final double LONGEST = 10_000;
  private static final double THICKEST = 500;

  /** A covering that stretches by half is no longer a covering to be stapled. */
  private static final double MOST_STRETCH = 0.5;

  private static final double MOST_DENSITY = 3_000;
  private static final double MOST_HARDNESS = 5_000;
  private static final double MOST_WEIGHT = 10_000;
  private static final int MOST_THICKNESSES = 100;
  private static final List<String> FAMILIES = List.of("woven", "coated", "leather", "knit");

  private final RowFields fields;

  RowReader(RowFields fields) {
    this.fields = fields;
  }

  Board board(Node row) {
    row.requireObject(
        "id",
        "name",
        "thicknesses",
        "lowerTolerance",
        "upperTolerance",
        "density",
        "specificGravity",
        "pressedFibre",
        "source",
        "status");
    String id = fields.id(row);
    Tolerance lower = tolerance(row.require("lowerTolerance"));
    Tolerance upper = row.get("upperTolerance").map(this::tolerance).orElse(lower);
    Sourced origin = fields.origin(row, Optional.empty());
    return new Board(
        id,
        fields.name(row, id),
        thicknesses(row, lower, upper, origin),
        lower.fixed(),
        lower.perMm(),
        row.require("density").number(1, MOST_DENSITY),
        row.require("specificGravity").number(0.01, 2),
        RowFields.flag(row, "pressedFibre"),
        origin);
  }

  /** How far a board may be off its nominal thickness: fixed + perMm x nominal, mm. */
  private record Tolerance(double fixed, double perMm) {
    double of(double nominal) {
      return fixed + perMm * nominal;
    }
  }

  private Tolerance tolerance(Node node) {
    node.requireObject("fixed", "perMm");
    return new Tolerance(
        fields.length(node, "fixed", 0, 10),
        node.get("perMm").map(n -> n.number(0, 0.2)).orElse(0.0));
  }

  private List<Board.Thickness> thicknesses(
      Node row, Tolerance lowerRule, Tolerance upperRule, Sourced origin) {
    List<Board.Thickness> all = new ArrayList<>();
    double before = 0;
    for (Node node : row.require("thicknesses").array(0, MOST_THICKNESSES)) {
      node.requireObject("nominal", "lower", "upper", "source", "status");
      double nominal = fields.length(node, "nominal", 0.1, THICKEST);
      RowFields.mustRise(node.require("nominal"), before, nominal);
      before = nominal;
      double lower =
          node.get("lower")
              .map(n -> fields.length(n, 0.1, nominal))
              .orElse(nominal - lowerRule.of(nominal));
      if (lower <= 0) {
        throw node.refuse(
            "the lower tolerance leaves nothing of " + node.require("nominal").shown(),
            "Give a smaller lowerTolerance, or this thickness its own \"lower\"");
      }
      double upper =
          node.get("upper")
              .map(n -> fields.length(n, nominal, THICKEST))
              .orElse(nominal + upperRule.of(nominal));
      Sourced own = fields.origin(node, Optional.of(origin));
      all.add(new Board.Thickness(nominal, lower, upper, own));
    }
    return all;
  }

  Foam foam(Node row) {
    row.requireObject("id", "name", "density", "hardness", "firm", "sheets", "source", "status");
    String id = fields.id(row);
    return new Foam(
        id,
        fields.name(row, id),
        row.require("density").number(1, MOST_DENSITY),
        row.require("hardness").number(1, MOST_HARDNESS),
        RowFields.flag(row, "firm"),
        fields.rising(row, "sheets", 0.1, THICKEST),
        fields.origin(row, Optional.empty()));
  }

  Wadding wadding(Node row) {
    row.requireObject(
        "id", "name", "loose", "compressed", "areaWeight", "rollWidth", "source", "status");
    String id = fields.id(row);
    double loose = fields.length(row, "loose", 0.1, THICKEST);
    return new Wadding(
        id,
        fields.name(row, id),
        loose,
        fields.length(row, "compressed", 0, loose),
        row.require("areaWeight").number(1, MOST_WEIGHT),
        fields.length(row, "rollWidth", 1, LONGEST),
        fields.origin(row, Optional.empty()));
  }

  Covering covering(Node row) {
    row.requireObject(
        "id",
        "name",
        "family",
        "thickness",
        "areaWeight",
        "rollWidth",
        "stretchAlong",
        "stretchAcross",
        "ease",
        "nap",
        "breathes",
        "twoFaced",
        "source",
        "status");
    String id = fields.id(row);
    String family = row.require("family").oneOf(FAMILIES);
    return new Covering(
        id,
        fields.name(row, id),
        Covering.Family.valueOf(family.toUpperCase(Locale.ROOT)),
        fields.length(row, "thickness", 0, 20),
        row.require("areaWeight").number(1, MOST_WEIGHT),
        fields.length(row, "rollWidth", 1, LONGEST),
        share(row, "stretchAlong"),
        share(row, "stretchAcross"),
        share(row, "ease"),
        RowFields.flag(row, "nap"),
        RowFields.flag(row, "breathes"),
        RowFields.flag(row, "twoFaced"),
        fields.origin(row, Optional.empty()));
  }

  /** A part of a length; none where it is left out, which is the careful side. */
  private static double share(Node row, String field) {
    return row.get(field).map(n -> n.number(0, MOST_STRETCH)).orElse(0.0);
  }

  Staple staple(Node row) {
    row.requireObject(
        "id", "name", "wireWidth", "wireThickness", "crown", "legs", "source", "status");
    String id = fields.id(row);
    double wireWidth = fields.length(row, "wireWidth", 0.1, 5);
    return new Staple(
        id,
        fields.name(row, id),
        wireWidth,
        fields.length(row, "wireThickness", 0.1, 5),
        // Narrower than both legs side by side it would be no staple.
        fields.length(row, "crown", 2 * wireWidth, 100),
        fields.rising(row, "legs", 1, 150),
        fields.origin(row, Optional.empty()));
  }

  Screw screw(Node row) {
    row.requireObject("id", "name", "shank", "head", "lengths", "edgeDistance", "source", "status");
    String id = fields.id(row);
    double shank = fields.length(row, "shank", 0.5, 30);
    return new Screw(
        id,
        fields.name(row, id),
        shank,
        fields.length(row, "head", shank, 60),
        fields.rising(row, "lengths", 1, 500),
        fields.length(row, "edgeDistance", 0, 200),
        fields.origin(row, Optional.empty()));
  }

  /** A roll leaves its height out. */
  Paper paper(Node row) {
    row.requireObject("id", "name", "width", "height", "source", "status");
    String id = fields.id(row);
    double width = fields.length(row, "width", 80, LONGEST);
    return new Paper(
        id,
        fields.name(row, id),
        width,
        row.get("height").map(n -> fields.length(n, width, LONGEST)).orElse(0.0),
        fields.origin(row, Optional.empty()));
  }
}
