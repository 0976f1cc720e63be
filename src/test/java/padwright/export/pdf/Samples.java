package padwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import padwright.export.Drawing;
import padwright.export.Drawing.Anchor;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.geometry.Bounds;
import padwright.geometry.Path;
import padwright.geometry.Vec2;
import padwright.material.Paper;
import padwright.material.Sourced;
import padwright.material.Status;

/** Drawings, papers and headers that tests of this package share. */
final class Samples {
  private static final Sourced MEMORY = new Sourced("ISO 216, ANSI Y14.1", Status.MEMORY);

  static final Paper A4 = new Paper("a4", "A4", 210, 297, MEMORY);
  static final Paper A3 = new Paper("a3", "A3", 297, 420, MEMORY);
  static final Paper LETTER = new Paper("letter", "Letter", 215.9, 279.4, MEMORY);
  static final Paper TABLOID = new Paper("tabloid", "Tabloid", 279.4, 431.8, MEMORY);
  static final Paper A0 = new Paper("a0", "A0", 841, 1189, MEMORY);
  static final Paper ROLL = new Paper("roll-914", "Roll 914 mm", 914, 0, MEMORY);

  static final JobHeader HEADER =
      new JobHeader("Reading nook", "Town library", "Forearm rest", "2 off", "2026-03-14");

  private Samples() {}

  static Path rectangle(double w, double h) {
    return Path.polygon(
        new Vec2(-w / 2, -h / 2),
        new Vec2(w / 2, -h / 2),
        new Vec2(w / 2, h / 2),
        new Vec2(-w / 2, h / 2));
  }

  static Drawing of(String title, Item... items) {
    Bounds b = new Bounds(0, 0, 0, 0);
    for (Item i : items) {
      if (i instanceof Stroke s) {
        b = b.union(s.path().bounds());
      }
    }
    return new Drawing(title, b.grown(2), List.of(items));
  }

  /** A rectangular cover with cut-off corners, folds and a name. */
  static Drawing cover(double w, double h) {
    double c = Math.min(w, h) / 6;
    Path cut =
        Path.polygon(
            new Vec2(-w / 2 + c, -h / 2),
            new Vec2(w / 2 - c, -h / 2),
            new Vec2(w / 2, -h / 2 + c),
            new Vec2(w / 2, h / 2 - c),
            new Vec2(w / 2 - c, h / 2),
            new Vec2(-w / 2 + c, h / 2),
            new Vec2(-w / 2, h / 2 - c),
            new Vec2(-w / 2, -h / 2 + c));
    return of(
        "Forearm rest: cover",
        new Stroke(cut, LineStyle.CUT),
        new Stroke(rectangle(w - 2 * c, h - 2 * c), LineStyle.FOLD),
        new Stroke(rectangle(w - c, h - c), LineStyle.TRIM),
        new Text(new Vec2(0, 4), 6, 0, Anchor.MIDDLE, true, "Cover"),
        new Text(new Vec2(0, -2), 3.5, 0, Anchor.MIDDLE, false, "this side up, on the back"));
  }

  /** Lines, circles and words anywhere in a box. */
  static Drawing random(Random r, double w, double h) {
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Vec2 a = new Vec2(r.nextDouble() * w, r.nextDouble() * h);
      Vec2 b = new Vec2(r.nextDouble() * w, r.nextDouble() * h);
      items.add(new Stroke(Path.line(a, b), LineStyle.values()[r.nextInt(5)]));
      items.add(new Text(a, 3.5, r.nextDouble() * 6, Anchor.values()[i % 3], false, "note " + i));
      double radius = 1 + r.nextDouble() * Math.min(w, h) / 3;
      items.add(new Stroke(Path.circle(b, radius), LineStyle.FOLD));
    }
    return new Drawing("Random", new Bounds(0, 0, w, h), items);
  }
}
