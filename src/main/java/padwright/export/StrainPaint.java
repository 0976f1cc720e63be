package padwright.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import padwright.cover.LaidCover.Sheet;
import padwright.cover.StrainField.Area;
import padwright.cover.StrainField.Kind;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;

/**
 * Areas of strain drawn: the greyer and closer hatched the more, one way where the covering is
 * eased, the other where it is stretched, level in a flap out of sight, crossed where it is more
 * than the covering takes; the largest strain of an area stands in it. mm.
 */
final class StrainPaint {
  /** Grey of an area by its step: that of no more than so many parts of its length. */
  private static final double[][] GREYS = {
    {0.02, 0.95}, {0.04, 0.89}, {0.08, 0.83}, {0.15, 0.77}, {Double.POSITIVE_INFINITY, 0.71}
  };

  /** Hatching stands half as far apart from here on, a fraction. */
  private static final double CLOSER = 0.04;

  private static final double WIDE = 2.4;

  /** What is over what the covering takes is crossed, lines so far apart. */
  private static final double CROSSED = 1.2;

  private static final double ROUNDING = 1e-9;

  private final List<Area> areas;

  StrainPaint(List<Area> areas) {
    this.areas = areas;
  }

  /** Draws what lies on a part of the pad, at 1 : k, moved, inside an outline on paper. */
  interface Painter {
    List<Item> items(double k, Vec2 shift, List<Vec2> outline);
  }

  static Area with(Area a, List<Vec2> polygon) {
    return new Area(a.kind(), a.least(), a.most(), a.over(), polygon);
  }

  boolean none() {
    return areas.isEmpty();
  }

  /** The most that a flap is strained. */
  double flaps() {
    return most(Kind.FLAP);
  }

  private double most(Kind kind) {
    return areas.stream().filter(a -> a.kind() == kind).mapToDouble(Area::most).max().orElse(0);
  }

  /** The largest strains in words. */
  String said() {
    List<String> words = new ArrayList<>();
    if (most(Kind.EASED) > 0) {
      words.add("eased up to " + WallBlocks.percent(most(Kind.EASED)));
    }
    if (most(Kind.STRETCHED) > 0) {
      double most = most(Kind.STRETCHED);
      words.add(
          "stretched "
              + (Double.isInfinite(most)
                  ? "more than any cloth"
                  : "up to " + WallBlocks.percent(most)));
    }
    return WrapMap.listed(words)
        + (areas.stream().anyMatch(Area::over) ? ", more than the covering takes" : "");
  }

  /** What of them lies in a window on the pad. */
  StrainPaint within(Bounds window) {
    List<Area> list = new ArrayList<>();
    for (Area a : areas) {
      List<Vec2> p = LayerField.clipped(a.polygon(), window);
      if (p.size() >= 3) {
        list.add(with(a, p));
      }
    }
    return new StrainPaint(list);
  }

  /** Draws all of them. */
  List<Item> items(double k, Vec2 shift, List<Vec2> outline) {
    List<Item> items = new ArrayList<>();
    // A flap lies under the covering beside it, and is drawn as if that were clear.
    for (boolean flaps : new boolean[] {false, true}) {
      Key key = new Key();
      List<Sheet> sheets = new ArrayList<>();
      List<Sheet> hidden = new ArrayList<>();
      for (Area a : areas) {
        List<Vec2> on =
            Polygons.anticlockwise(
                a.polygon().stream().map(p -> p.times(1 / k).plus(shift)).toList());
        if (flaps == (a.kind() == Kind.FLAP)) {
          sheets.add(new Sheet(on, key.number(a)));
          items.add(new Fill(Path.polygon(on), grey(a)));
        } else if (!flaps) {
          hidden.add(new Sheet(on, Key.HIDDEN));
        }
      }
      if (!sheets.isEmpty()) {
        sheets.addAll(hidden);
        items.addAll(LayerHatching.of(sheets, outline, LineStyle.MARK, key).items());
      }
    }
    return items;
  }

  private static double grey(Area a) {
    int i = 0;
    while (a.most() > GREYS[i][0] + ROUNDING) {
      i++;
    }
    return GREYS[i][1];
  }

  /** The most in an area: a part of a per cent where that is small. */
  private static String said(Area a) {
    double percent = 100 * a.most();
    double shown = percent < 10 ? Math.round(10 * percent) / 10.0 : Math.round(percent);
    String number = percent > 100 + ROUNDING ? "100+" : PieceNotes.plainNumber(shown);
    return switch (a.kind()) {
      case EASED -> "-" + number;
      case STRETCHED -> "+" + number;
      case FLAP -> "\u00b1" + number;
    };
  }

  /** Areas that look alike bear one number, so that no line parts them. */
  private static final class Key implements LayerHatching.Look {
    /** More than there are areas: nothing is drawn or written there. */
    static final int HIDDEN = 100_000;

    private final Map<String, Integer> numbers = new TreeMap<>();
    private final List<Area> like = new ArrayList<>();

    int number(Area a) {
      String look = said(a) + " " + a.over();
      Integer number = numbers.get(look);
      if (number == null) {
        like.add(a);
        number = like.size();
        numbers.put(look, number);
      }
      return number;
    }

    @Override
    public String words(int number) {
      return number > like.size() ? "" : StrainPaint.said(like.get(number - 1));
    }

    @Override
    public List<LayerHatching.Pattern> patterns(int least, int most) {
      List<LayerHatching.Pattern> list = new ArrayList<>();
      pattern(list, Kind.EASED, Math.PI / 4);
      pattern(list, Kind.STRETCHED, -Math.PI / 4);
      pattern(list, Kind.FLAP, 0);
      if (like.stream().anyMatch(Area::over)) {
        for (double angle : new double[] {0, Math.PI / 2}) {
          list.add(
              new LayerHatching.Pattern(
                  angle,
                  CROSSED,
                  r -> r.layers() <= like.size() && like.get(r.layers() - 1).over()));
        }
      }
      return list;
    }

    private void pattern(List<LayerHatching.Pattern> list, Kind kind, double angle) {
      if (like.stream().anyMatch(a -> a.kind() == kind && !a.over())) {
        list.add(
            new LayerHatching.Pattern(
                angle,
                WIDE / 2,
                r -> {
                  Area a = r.layers() > like.size() ? null : like.get(r.layers() - 1);
                  return a != null
                      && a.kind() == kind
                      && !a.over()
                      && (a.most() > CLOSER + ROUNDING || Math.floorMod(r.row(), 2) == 0);
                }));
      }
    }
  }

  static WrapMap.Block legend() {
    List<Item> items = new ArrayList<>();
    double x = 0;
    Object[][] samples = {
      {Kind.EASED, 0.02, false, "- eased"},
      {Kind.STRETCHED, 0.02, false, "+ stretched"},
      {Kind.FLAP, 0.02, false, "\u00b1 flap out of sight"},
      {Kind.EASED, 0.1, true, "more than it takes"}
    };
    for (Object[] s : samples) {
      Bounds b = new Bounds(x, -8, x + 12, 0);
      List<Vec2> box = LayerField.corners(b);
      Area area = new Area((Kind) s[0], 0, (double) s[1], (boolean) s[2], box);
      Key key = new Key();
      items.add(new Fill(Path.polygon(box), grey(area)));
      items.addAll(LayerHatching.sample(b, key.number(area), key));
      items.add(new Stroke(Path.polygon(box), LineStyle.MARK, true));
      String words = (String) s[3];
      items.add(new Text(new Vec2(x + 14, -5.2), Lettering.NOTE, 0, Anchor.START, false, words));
      x += 14 + Lettering.width(words, Lettering.NOTE) + 6;
    }
    return WrapMap.captioned(
        items,
        WrapMap.WIDE,
        9,
        "Strain in % of the covering's length; the number in an area is the most in it. Greyer:"
            + " more; hatched closer: over 4 %. Steps begin at 0.5, 1, 2, 4, 6, 8, 10, 15, 20, 30"
            + " and 50 %, and at what the covering takes; white: less than 0.5 %. A flap is pulled"
            + " on one edge and gathered on the other where its fold bends: an estimate. Not"
            + " mapped: joints of under 3 degrees, pleats of a rounding, seams of gussets.");
  }
}
