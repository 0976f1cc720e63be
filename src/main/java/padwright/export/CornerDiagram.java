package padwright.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import padwright.cover.CornerPlan;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.export.SharpPictures.StapleBar;
import padwright.fastening.StaplePlan.Position;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.pattern.PartResult;

/**
 * How a corner is folded, step by step: the flat corner with its true lines, the steps in space
 * from this part's height, turn-under and fold, the finished corner from outside and from the back
 * with its staples. A sentence stands under each picture. Not to scale; mm on paper.
 */
public final class CornerDiagram {
  private static final double CELL = 76;
  private static final double PICTURE = 56;
  private static final double GAP = 8;
  private static final int COLUMNS = 3;

  /** Where a viewer has not the font, the one it takes instead may be this much wider. */
  private static final double WIDER = 1.12;

  private static final double EDGE = 6;
  private static final double PITCH = Lettering.NOTE * Lettering.LEADING;

  private CornerDiagram() {}

  /**
   * One diagram for each way this part's corners are folded; corners that are folded alike, or as
   * mirror images, share one. Named {@code corner-} and the way it is folded, such as {@code
   * corner-single-pleat}, or {@code rim-} where the whole edge is one rounding; a second of the
   * same name ends in {@code -2}. The order, and so the names, follow the part's corners.
   */
  public static List<NamedDrawing> all(PartHeader header, PartResult result) {
    Map<String, List<CornerPlan>> alike = new LinkedHashMap<>();
    for (CornerPlan p : result.cover().corners()) {
      if (p.turn() < 0 && HollowPictures.of(result, p) == null) {
        // Clips are cut where the cover shows them; there is nothing to fold.
        continue;
      }
      String key =
          p.treatment() + " " + Math.round(1000 * p.turn()) + " " + Math.round(10 * p.radius());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
    }
    List<NamedDrawing> list = new ArrayList<>();
    Map<String, Integer> given = new HashMap<>();
    for (List<CornerPlan> group : alike.values()) {
      String name = name(group.get(0));
      int times = given.merge(name, 1, Integer::sum);
      String unique = times == 1 ? name : name + "-" + times;
      list.add(new NamedDrawing(unique, of(header, result, group)));
    }
    return list;
  }

  private static String name(CornerPlan plan) {
    String folded = CornerWords.name(plan.treatment()).replace(' ', '-');
    return (isRim(plan) ? "rim-" : "corner-") + folded;
  }

  /** Whether it is the whole edge of a round part: no corner turns by half a turn or more. */
  private static boolean isRim(CornerPlan plan) {
    return plan.turn() > Math.PI;
  }

  /** The diagram of one corner. */
  public static Drawing of(PartHeader header, PartResult result, CornerPlan plan) {
    return of(header, result, List.of(plan));
  }

  private static Drawing of(PartHeader header, PartResult result, List<CornerPlan> group) {
    CornerPlan plan = group.get(0);
    if (plan.turn() < 0) {
      HollowPictures hollow = HollowPictures.of(result, plan);
      return sheet(header, group, hollow.scenes(), hollow.sentences(header.units()));
    }
    CornerSolid corner = CornerSolid.of(result, plan);
    List<StapleBar> bars = new ArrayList<>();
    for (Position p : result.staples().positions()) {
      if (corner.shows(p.at())) {
        bars.add(new StapleBar(p.at(), p.angle()));
      }
    }
    int holding =
        (int) result.staples().positions().stream().filter(p -> corner.inRounding(p.at())).count();
    int layers = group.stream().mapToInt(result::layersAt).max().orElse(0);
    List<Scene> scenes = new ArrayList<>();
    double edge = corner.perSide() + result.spec().grip();
    scenes.add(new FlatCorner(corner, edge).scene(result.cover(), result.shape().outline()));
    scenes.addAll(
        plan.radius() == 0
            ? new SharpPictures(corner).scenes(bars)
            : new RoundPictures(corner).scenes(bars));
    List<String> sentences =
        new CornerWords(corner, header.units(), clear(result, corner), layers, holding).sentences();
    return sheet(header, group, scenes, sentences);
  }

  /** How far from the corner the under strip is stapled first: at most a quarter of its side. */
  private static double clear(PartResult result, CornerSolid corner) {
    double clear = result.spec().cornerClear();
    List<String> names = result.shape().sideNames();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equals(corner.under())) {
        clear = Math.min(clear, result.shape().outline().segments().get(i).length() / 4);
      }
    }
    return clear;
  }

  private static Drawing sheet(
      PartHeader header, List<CornerPlan> group, List<Scene> scenes, List<String> sentences) {
    List<Item> items = new ArrayList<>();
    CornerPlan plan = group.get(0);
    String title =
        header.partName()
            + (isRim(plan) ? ": rim, " : ": corner, ")
            + CornerWords.name(plan.treatment());
    double width = COLUMNS * CELL + (COLUMNS - 1) * GAP;
    double y = -Lettering.NAME * Lettering.ASCENT;
    items.add(new Text(new Vec2(0, y), Lettering.NAME, 0, Anchor.START, false, title));
    y -= 2;
    for (String line : wrapped(about(group), width)) {
      y -= PITCH;
      items.add(note(new Vec2(0, y), line));
    }
    y -= GAP;
    double lowest = y;
    for (int i = 0; i < scenes.size(); i++) {
      int column = i % COLUMNS;
      if (column == 0) {
        y = i == 0 ? y : lowest - GAP;
      }
      double x = column * (CELL + GAP);
      lowest = Math.min(lowest, cell(items, i + 1, scenes.get(i), sentences.get(i), x, y));
    }
    Bounds extent = new Bounds(0, lowest, width, 0);
    return new Drawing(
        title, "How the corner is folded, step by step; not to scale.", extent.grown(EDGE), items);
  }

  /** One framed picture with its number and sentence; returns where it ends. */
  private static double cell(
      List<Item> items, int number, Scene scene, String sentence, double x, double y) {
    Bounds frame = new Bounds(x, y - PICTURE, x + CELL, y);
    items.add(
        new Stroke(
            Path.polygon(
                new Vec2(frame.minX(), frame.minY()),
                new Vec2(frame.maxX(), frame.minY()),
                new Vec2(frame.maxX(), frame.maxY()),
                new Vec2(frame.minX(), frame.maxY())),
            LineStyle.FRAME));
    items.addAll(scene.fitted(new Bounds(x + 4, y - PICTURE + 3, x + CELL - 4, y - 7)));
    items.add(
        new Text(
            new Vec2(x + 2, y - Lettering.NAME),
            Lettering.NAME,
            0,
            Anchor.START,
            false,
            Integer.toString(number)));
    double at = y - PICTURE - 1;
    for (String line : wrapped(sentence, CELL / WIDER)) {
      at -= PITCH;
      items.add(note(new Vec2(x, at), line));
    }
    return at - Lettering.NOTE * Lettering.DESCENT;
  }

  private static Text note(Vec2 at, String line) {
    return new Text(at, Lettering.NOTE, 0, Anchor.START, false, line);
  }

  private static String about(List<CornerPlan> group) {
    List<String> names = group.stream().map(CornerPlan::name).toList();
    String also =
        names.size() == 1
            ? ""
            : "; " + String.join(", ", names.subList(1, names.size())) + " likewise or mirrored";
    return "Drawn: " + names.get(0) + also + ". " + sentence(group.get(0).reason());
  }

  private static String sentence(String s) {
    if (s.isEmpty()) {
      return "";
    }
    String start = s.substring(0, 1).toUpperCase(Locale.ROOT) + s.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }

  /** Words set in lines no wider than {@code width}. */
  static List<String> wrapped(String text, double width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && Lettering.width(longer, Lettering.NOTE) > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    if (!line.isEmpty()) {
      lines.add(line.toString());
    }
    return lines;
  }
}
