package padwright.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.material.Catalogue;
import padwright.material.Constants;
import padwright.material.Foam;
import padwright.measure.InputRefused;

/**
 * The stacks that can be built of a part's foams from the sheets the catalogue lists: each foam
 * that the part names is one sheet, or doubled. Neighbouring layers of the same foam and overhang
 * are one foam that is doubled already. A part of one foam alone may have up to three sheets, and
 * another foam as hard; a part of several may have one sheet more than foams. All mm.
 *
 * <p>The foams are added one after the other, and of the stacks that are equally thick and have as
 * many sheets only those nearest to the part as it stands are carried on (dynamic programming), so
 * that twenty foams take no longer than they must.
 */
final class SheetStacks {
  /** A foam is glued up of so many sheets at most: more joints than that show; own choice. */
  static final int MOST_SHEETS = 3;

  /** A part has no more layers than a job file takes. */
  private static final int MOST_LAYERS = 20;

  /** Ways to the same thickness that are kept: the others differ in which sheets are bought. */
  private static final int WAYS = 3;

  /** Thicknesses that differ by less are one: sheets in mm and in inches, added up. */
  private static final double SAME = 1e-6;

  private static final Comparator<Stack> NEAREST =
      Comparator.comparingDouble((Stack s) -> Math.rint(s.departure() / SAME))
          .thenComparing(Stack::unequal);

  /** A foam of the part, with the thickness all its layers have together. */
  private record Named(Foam foam, OptionalDouble overhang, boolean crown, double thickness) {}

  /**
   * A stack, or the lower part of one.
   *
   * @param below what it stands on; null where it stands on the board
   * @param sheets of the topmost foam, thick to thin
   * @param departure how much each foam differs from its share in the part as it stands, mm, summed
   * @param unequal how many foams are glued up of sheets that differ
   */
  private record Stack(
      Stack below,
      Foam foam,
      OptionalDouble overhang,
      boolean crown,
      List<Double> sheets,
      double thickness,
      int count,
      double departure,
      int unequal,
      boolean otherFoam) {
    List<FoamLayer> layers() {
      List<FoamLayer> all = new ArrayList<>(below == null ? List.of() : below.layers());
      sheets.forEach(t -> all.add(new FoamLayer(foam.id(), t, overhang, crown)));
      return all;
    }
  }

  /** A finished stack: its layers from the board upwards and how they differ from the part's. */
  record Found(List<FoamLayer> layers, double thickness, double departure, boolean otherFoam) {}

  private record Key(long thickness, int count, boolean otherFoam) {}

  private final List<Named> named = new ArrayList<>();
  private final Catalogue catalogue;
  private final int mostSheets;

  SheetStacks(WrappedPad pad, Catalogue catalogue) {
    this.catalogue = catalogue;
    for (FoamLayer layer : pad.foam()) {
      Foam foam = row(pad, layer.foam());
      Named last = named.isEmpty() ? null : named.get(named.size() - 1);
      if (last != null
          && last.foam().equals(foam)
          && last.crown() == layer.crown()
          && last.overhang().equals(layer.overhang())) {
        named.set(
            named.size() - 1,
            new Named(foam, last.overhang(), last.crown(), last.thickness() + layer.thickness()));
      } else {
        named.add(new Named(foam, layer.overhang(), layer.crown(), layer.thickness()));
      }
    }
    mostSheets = Math.min(MOST_LAYERS, Math.max(MOST_SHEETS, named.size() + 1));
  }

  private Foam row(WrappedPad pad, String id) {
    Foam foam =
        catalogue
            .foam(id)
            .orElseThrow(
                () ->
                    new InputRefused(
                        "",
                        0,
                        "parts[" + pad.id() + "].foam",
                        "the catalogue's foams have no \"" + id + "\"",
                        "Nearest: "
                            + String.join(", ", catalogue.nearest(Catalogue.Kind.FOAM, id))));
    if (foam.sheets().isEmpty()) {
      throw new InputRefused(
          "",
          0,
          "parts[" + pad.id() + "].foam",
          "the catalogue lists no sheets of \"" + id + "\"",
          "Add the thicknesses it is sold in to your catalogue");
    }
    return foam;
  }

  /** How many foams there are to choose sheets for. */
  int foams() {
    return named.size();
  }

  /** The least thickness that the sheets can make. */
  double least() {
    return named.stream()
        .mapToDouble(n -> foams(n).stream().mapToDouble(f -> f.sheets().get(0)).min().orElse(0))
        .sum();
  }

  /** The greatest thickness that the sheets can make. */
  double most() {
    double each = named.stream().mapToDouble(this::thickest).sum();
    int more = mostSheets - named.size();
    return each + more * named.stream().mapToDouble(this::thickest).max().orElse(0);
  }

  private double thickest(Named n) {
    return foams(n).stream()
        .mapToDouble(f -> f.sheets().get(f.sheets().size() - 1))
        .max()
        .orElse(0);
  }

  /** The foam that is named and, where it is the only one, those that are as hard and as firm. */
  private List<Foam> foams(Named n) {
    List<Foam> foams = new ArrayList<>(List.of(n.foam()));
    if (named.size() == 1) {
      double share = Constants.value("foam-hardness-tolerance") / 100;
      for (Foam f : catalogue.foams()) {
        boolean alike =
            f.firm() == n.foam().firm()
                && Math.abs(f.hardness() - n.foam().hardness()) <= share * n.foam().hardness();
        if (alike && !f.id().equals(n.foam().id()) && !f.sheets().isEmpty()) {
          foams.add(f);
        }
      }
    }
    return foams;
  }

  /** The stacks to a height that may be missed by a sheet at most. */
  List<Found> near(double wanted) {
    double reach = wanted + named.stream().mapToDouble(this::thickest).max().orElse(0) + SAME;
    // Each foam's part of a thicker or thinner stack is as large as it is of the part's own.
    double share = wanted / named.stream().mapToDouble(Named::thickness).sum();
    Map<Key, List<Stack>> standing = new LinkedHashMap<>();
    standing.put(new Key(0, 0, false), java.util.Collections.singletonList(null));
    for (int i = 0; i < named.size(); i++) {
      Map<Key, List<Stack>> next = new LinkedHashMap<>();
      int left = named.size() - 1 - i;
      for (List<Stack> ways : standing.values()) {
        for (Stack below : ways) {
          int count = below == null ? 0 : below.count();
          double room = reach - (below == null ? 0 : below.thickness());
          put(next, below, named.get(i), room, mostSheets - left - count, share);
        }
      }
      standing = next;
    }
    return standing.values().stream()
        .flatMap(List::stream)
        .map(s -> new Found(s.layers(), s.thickness(), s.departure(), s.otherFoam()))
        .toList();
  }

  private void put(
      Map<Key, List<Stack>> next, Stack below, Named n, double room, int mostOfThis, double share) {
    for (Foam foam : foams(n)) {
      List<Double> sheets = foam.sheets();
      for (int a = 0; a < sheets.size() && sheets.get(a) <= room; a++) {
        add(next, below, n, foam, List.of(sheets.get(a)), share);
        for (int b = 0; mostOfThis > 1 && b <= a; b++) {
          if (sheets.get(a) + sheets.get(b) > room) {
            break;
          }
          add(next, below, n, foam, List.of(sheets.get(a), sheets.get(b)), share);
          for (int c = 0; mostOfThis > 2 && c <= b; c++) {
            if (sheets.get(a) + sheets.get(b) + sheets.get(c) > room) {
              break;
            }
            add(next, below, n, foam, List.of(sheets.get(a), sheets.get(b), sheets.get(c)), share);
          }
        }
      }
    }
  }

  private static void add(
      Map<Key, List<Stack>> next,
      Stack below,
      Named n,
      Foam foam,
      List<Double> sheets,
      double share) {
    double own = sheets.stream().mapToDouble(Double::doubleValue).sum();
    boolean equal = sheets.stream().distinct().count() == 1;
    Stack s =
        new Stack(
            below,
            foam,
            n.overhang(),
            n.crown(),
            sheets,
            own + (below == null ? 0 : below.thickness()),
            sheets.size() + (below == null ? 0 : below.count()),
            Math.abs(own - share * n.thickness()) + (below == null ? 0 : below.departure()),
            (equal ? 0 : 1) + (below == null ? 0 : below.unequal()),
            foam != n.foam() || below != null && below.otherFoam());
    Key key = new Key(Math.round(s.thickness() / SAME), s.count(), s.otherFoam());
    List<Stack> ways = next.computeIfAbsent(key, k -> new ArrayList<>(WAYS + 1));
    int at = ways.size();
    while (at > 0 && NEAREST.compare(s, ways.get(at - 1)) < 0) {
      at--;
    }
    if (at < WAYS) {
      ways.add(at, s);
      if (ways.size() > WAYS) {
        ways.remove(WAYS);
      }
    }
  }
}
