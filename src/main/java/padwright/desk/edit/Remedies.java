package padwright.desk.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.desk.edit.PartEdit.Step;
import padwright.material.Catalogue;

/**
 * Changes worth trying against a finding, the least first. They are tried, never trusted: only what
 * clears the finding and brings no new stop is offered.
 */
public final class Remedies {
  private static final double HALF = 0.5;
  private static final double SAME = 0.05;
  private static final double RELIEF = 12;
  private static final double[] PASSAGES = {60, 100, 150, 200, 300};

  private final WrappedPad pad;
  private final Catalogue catalogue;
  private final Units units;
  private final List<Remedy> found = new ArrayList<>();

  private Remedies(WrappedPad pad, Catalogue catalogue, Units units) {
    this.pad = pad;
    this.catalogue = catalogue;
    this.units = units;
  }

  /**
   * What may clear a finding of a part.
   *
   * @param turnUnder the turn-under taken, mm
   */
  public static List<Remedy> of(
      Finding f, WrappedPad pad, double turnUnder, Catalogue catalogue, Units units) {
    Remedies r = new Remedies(pad, catalogue, units);
    r.collect(f, turnUnder);
    return List.copyOf(r.found);
  }

  private void collect(Finding f, double turnUnder) {
    String rule = f.rule();
    if (rule.startsWith("staple-")) {
      staples(f);
    } else if (rule.startsWith("turn-under") || rule.equals("cover-overlaps")) {
      f.limit().ifPresent(mm -> length("cover.turnUnder", "turn-under", down(mm)));
      smallerTurnUnder(turnUnder);
    } else if (rule.equals("corners-close")) {
      smallerTurnUnder(turnUnder);
    } else if (rule.startsWith("wrap-raw-edge")) {
      length("corners.reliefStop", "relief cuts stop short by", RELIEF);
    } else if (rule.equals("corner-treatment")) {
      add("leave the corners to be chosen", Step.remove("corners"));
    } else if (rule.equals("edge-meets")) {
      edge();
    } else if (rule.equals("foam-sheet")) {
      foamSheets();
    } else if (rule.equals("cover-roll-width")) {
      String other = pad.cover().warpAlongWidth() ? "length" : "width";
      add("run the warp along the " + other, Step.put("cover.warp", other));
    } else if (rule.equals("cover-stretch")) {
      add("take nothing off for stretch", Step.remove("cover.stretchAllowance"));
    } else if (rule.startsWith("mount-screw")) {
      screws();
    } else if (rule.startsWith("run-passage") || rule.equals("run-section-smooth")) {
      passages();
    } else if (rule.equals("opening-dry-fit") || rule.equals("vent-missing")) {
      return;
    } else if (rule.equals("zone-dust-cover") || rule.equals("vent-dust-cover")) {
      add("leave the dust cover out", Step.put(PartFields.DUST_COVER, false));
    }
  }

  private void add(String label, Step... steps) {
    found.add(new Remedy(label, List.of(steps)));
  }

  private void length(String place, String label, double mm) {
    if (mm > 0) {
      add(label + " " + FieldWords.of(mm, units), Step.mm(place, mm));
    }
  }

  private static double down(double mm) {
    return Math.floor(mm / HALF) * HALF;
  }

  private void smallerTurnUnder(double now) {
    for (double share : new double[] {0.8, 0.6, 0.5}) {
      length("cover.turnUnder", "turn-under", down(now * share));
    }
  }

  private void staples(Finding f) {
    if (pad.staples().leg().isPresent()) {
      add("take the longest leg that passes", Step.remove("staples.leg"));
    }
    if (f.rule().equals("staple-spacing") || f.rule().equals("staple-gap")) {
      f.limit().ifPresent(mm -> length("staples.spacing", "spacing", Math.ceil(mm)));
      return;
    }
    if (f.rule().equals("staple-on-arris")) {
      f.limit()
          .ifPresent(mm -> length("staples.edgeDistance", "staple from the edge", Math.ceil(mm)));
      return;
    }
    for (var row : catalogue.staples()) {
      boolean own = pad.staples().staple().map(row.id()::equals).orElse(false);
      if (!own) {
        add("use " + row.name(), Step.put("staples.staple", row.id()), Step.remove("staples.leg"));
      }
    }
    for (double t : PartFields.thicknesses(catalogue, pad.base().board())) {
      if (t > pad.base().thickness() + SAME) {
        add(
            "board of " + FieldWords.of(t, units),
            Step.mm("base.thickness", t),
            Step.remove("base.measured"),
            Step.remove("staples.leg"));
      }
    }
  }

  private void edge() {
    double now =
        pad.edge() instanceof EdgeShape.Round r
            ? r.radius()
            : pad.edge() instanceof EdgeShape.Bevel b ? b.size() : 0;
    String place = pad.edge() instanceof EdgeShape.Bevel ? "edge.bevel" : "edge.round";
    for (double share : new double[] {0.75, 0.5, 0.25}) {
      if (down(now * share) > 0) {
        length(place, place.endsWith("bevel") ? "bevel" : "round the edge to", down(now * share));
      }
    }
    add("leave the edge square", Step.put("edge", "square"));
  }

  /** A layer that no sheet makes, out of two that do, or of the nearest sheet. */
  private void foamSheets() {
    for (int i = 0; i < pad.foam().size(); i++) {
      FoamLayer layer = pad.foam().get(i);
      List<Double> sheets = catalogue.foam(layer.foam()).map(f -> f.sheets()).orElse(List.of());
      boolean sold = sheets.stream().anyMatch(s -> Math.abs(s - layer.thickness()) < SAME);
      if (sheets.isEmpty() || sold) {
        continue;
      }
      for (double a : sheets) {
        for (double b : sheets) {
          if (a >= b && Math.abs(a + b - layer.thickness()) < SAME) {
            doubled(i, layer, a, b);
          }
        }
      }
      double nearest = sheets.get(0);
      for (double s : sheets) {
        nearest =
            Math.abs(s - layer.thickness()) < Math.abs(nearest - layer.thickness()) ? s : nearest;
      }
      length("foam[" + i + "].thickness", "foam layer " + (i + 1) + " of", nearest);
    }
  }

  private void doubled(int at, FoamLayer layer, double lower, double upper) {
    List<Object> layers = new ArrayList<>();
    for (int i = 0; i < pad.foam().size(); i++) {
      FoamLayer own = pad.foam().get(i);
      if (i == at) {
        layers.add(tree(layer, lower));
        layers.add(tree(layer, upper));
      } else {
        layers.add(tree(own, own.thickness()));
      }
    }
    add(
        "foam layer "
            + (at + 1)
            + " of two sheets, "
            + FieldWords.of(lower, units)
            + " and "
            + FieldWords.of(upper, units),
        Step.put("foam", layers));
  }

  private static Map<String, Object> tree(FoamLayer layer, double thickness) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("foam", layer.foam());
    m.put("thickness", PartEdit.mm(thickness));
    OptionalDouble overhang = layer.overhang();
    overhang.ifPresent(mm -> m.put("overhang", PartEdit.mm(mm)));
    if (layer.crown()) {
      m.put("crown", true);
    }
    return m;
  }

  private void screws() {
    if (pad.host().screwLength().isPresent()) {
      add("take the longest screw that passes", Step.remove("host.screwLength"));
    }
    for (var row : catalogue.screws()) {
      boolean own = pad.host().screw().map(row.id()::equals).orElse(false);
      if (!own) {
        add("use " + row.name(), Step.put("host.screw", row.id()), Step.remove("host.screwLength"));
      }
    }
  }

  private void passages() {
    for (int i = 0; i < pad.runs().size(); i++) {
      boolean shaped =
          pad.runs().get(i).edge().isPresent() || pad.runs().get(i).overhang().isPresent();
      for (double mm : PASSAGES) {
        if (shaped && pad.runs().get(i).passage().orElse(0) != mm) {
          length("runs[" + i + "].passage", "run " + (i + 1) + " passes into the next over", mm);
        }
      }
    }
  }
}
