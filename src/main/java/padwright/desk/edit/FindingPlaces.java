package padwright.desk.edit;

import java.util.List;
import java.util.Map;

/** Which member of a part a finding is about, so that it can be shown beside its fields. */
public final class FindingPlaces {
  /** What a rule's name begins with, and the place of the field it is about. */
  private static final List<Map.Entry<String, String>> PLACES =
      List.of(
          Map.entry("staple-spacing", "staples.spacing"),
          Map.entry("staple-gap", "staples.spacing"),
          Map.entry("staple-on-arris", "staples.edgeDistance"),
          Map.entry("staple-pull", "staples.pull"),
          Map.entry("staple-", "staples.leg"),
          Map.entry("turn-under", "cover.turnUnder"),
          Map.entry("edge-meets", "edge"),
          Map.entry("hole-", "base.holes[0].x"),
          Map.entry("outline-kinks", "base.outline"),
          Map.entry("dome-", "edge"),
          Map.entry("corners-close", "cover.turnUnder"),
          Map.entry("corner-", "corners.treatment"),
          Map.entry("wrap-raw-edge", "corners.reliefStop"),
          Map.entry("wrap-", "cover.turnUnder"),
          Map.entry("cover-stretch", "cover.stretchAllowance.along"),
          Map.entry("cover-roll-width", "cover.warp"),
          Map.entry("cover-", "cover.covering"),
          Map.entry("hollow-", "cover.covering"),
          Map.entry("foam-apart", "foam[0].overhang"),
          Map.entry("foam-", "foam[0].thickness"),
          Map.entry("opening-", "base.clearance"),
          Map.entry("mount-screw", "host.screwLength"),
          Map.entry("mount-", "host.fixing"),
          Map.entry("run-", "runs[0].passage"),
          Map.entry("cutout-", "fittings.cutOuts[0].x"),
          Map.entry("vent-", "fittings.vents[0].x"),
          Map.entry("insert-", "fittings.tNuts[0].x"),
          Map.entry("zone-", "fittings.zones[0].x"));

  private FindingPlaces() {}

  /** The place of the field that a rule is about; the part's name where it is about the whole. */
  public static String of(String rule) {
    return PLACES.stream()
        .filter(e -> rule.startsWith(e.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("name");
  }

  /** The member whose fields a place is among, such as {@code foam[1]}. */
  public static String member(String place) {
    if (place.startsWith("foam[")
        || place.startsWith("runs[")
        || place.startsWith("fittings.")
        || place.startsWith("base.holes[")
        || place.startsWith("host.positions[")) {
      int end = place.indexOf(']');
      return end < 0 ? place : place.substring(0, end + 1);
    }
    int dot = place.indexOf('.');
    String first = dot < 0 ? place : place.substring(0, dot);
    return List.of("name", "id", "kind", "quantity", "mirrored", "front").contains(first)
        ? PartFields.PART
        : first;
  }
}
