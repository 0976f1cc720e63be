package padwright.desk.view;

import java.util.ArrayList;
import java.util.List;
import padwright.export.Drawing;
import padwright.export.Drawing.Fill;
import padwright.export.Drawing.Item;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Lines;
import padwright.export.Drawing.Stroke;
import padwright.export.Drawing.Text;
import padwright.export.Lettering;
import padwright.geometry.Bounds;

/**
 * A drawing made ready to be painted many times, in its own order: arcs are chords, and lines of
 * one style that follow each other are one stroke of the pen. What lies outside the view is left
 * out, and so are words too small to read with the lines that only serve them.
 */
public final class Painting {
  /** Letters lower than this are not read but only seen as dirt, points of their body. */
  public static final double LEAST_LETTER = 5;

  /** How far chords may leave an arc, points: not seen. */
  private static final double CHORD_ERROR = 0.1;

  private final List<Layer> layers;
  private final double finest;

  /** Something of one kind to be painted at one go. */
  public sealed interface Shown {}

  /** Lines of one pen. */
  public record Ink(Pen pen, List<Run> runs) implements Shown {}

  /** A filled area; 0 is the ink, 1 the paper. */
  public record Tone(double grey, Run run) implements Shown {}

  /** A text. */
  public record Word(Text text) implements Shown {}

  /** As painted at any scale; a text's box is what it covers. */
  private sealed interface Layer {}

  private record InkLayer(LineStyle style, boolean sample, List<Run> runs) implements Layer {}

  private record ToneLayer(double grey, Run run) implements Layer {}

  private record WordLayer(Text text, Bounds box) implements Layer {}

  private Painting(List<Layer> layers, double finest) {
    this.layers = layers;
    this.finest = finest;
  }

  /** Ready for a scale, points a mm, and for somewhat larger and smaller ones. */
  public static Painting of(Drawing drawing, double scale) {
    double finest = Math.scalb(1, Math.getExponent(scale) + 1);
    double error = CHORD_ERROR / finest;
    List<Layer> layers = new ArrayList<>();
    InkLayer open = null;
    for (Item item : drawing.items()) {
      if (item instanceof Stroke s) {
        open = opened(layers, open, s.style(), s.sample());
        open.runs.add(Run.of(s.path(), error));
      } else if (item instanceof Lines l) {
        open = opened(layers, open, l.style(), l.sample());
        for (int i = 0; i < l.count(); i++) {
          open.runs.add(Run.of(l.start(i), l.end(i)));
        }
      } else {
        open = null;
        layers.add(
            item instanceof Text t
                ? new WordLayer(t, Lettering.box(t).bounds())
                : new ToneLayer(((Fill) item).grey(), Run.of(((Fill) item).path(), error)));
      }
    }
    return new Painting(layers, finest);
  }

  private static InkLayer opened(
      List<Layer> layers, InkLayer open, LineStyle style, boolean sample) {
    if (open != null && open.style == style && open.sample == sample) {
      return open;
    }
    InkLayer fresh = new InkLayer(style, sample, new ArrayList<>());
    layers.add(fresh);
    return fresh;
  }

  /** Whether its chords suit a scale: neither seen nor many times too many. */
  public boolean suits(double scale) {
    return scale <= finest && scale > finest / 8;
  }

  /** What is to be painted in a view, from back to front. */
  public List<Shown> in(Viewport view) {
    boolean worded = Lettering.NOTE * view.scale() >= LEAST_LETTER;
    List<Shown> shown = new ArrayList<>();
    for (Layer layer : layers) {
      if (layer instanceof InkLayer ink) {
        if (worded || !servesWords(ink)) {
          ink(shown, ink, view);
        }
      } else if (layer instanceof ToneLayer tone) {
        if (view.visible().overlaps(tone.run.bounds())) {
          shown.add(new Tone(tone.grey, tone.run));
        }
      } else if (layer instanceof WordLayer word) {
        if (word.text.height() * view.scale() >= LEAST_LETTER
            && view.visible().overlaps(word.box)) {
          shown.add(new Word(word.text));
        }
      }
    }
    return shown;
  }

  /** Lines that say nothing, or the wrong thing, once their words are left out. */
  private static boolean servesWords(InkLayer ink) {
    return ink.sample || ink.style == LineStyle.LEADER || ink.style == LineStyle.CHECK;
  }

  private static void ink(List<Shown> shown, InkLayer ink, Viewport view) {
    Pen pen = Pen.of(ink.style, view.scale());
    Bounds window = view.visible().grown(pen.width() / view.scale());
    List<Run> seen = new ArrayList<>(ink.runs.size());
    for (Run run : ink.runs) {
      if (window.overlaps(run.bounds())) {
        seen.add(run);
      }
    }
    if (!seen.isEmpty()) {
      shown.add(new Ink(pen, seen));
    }
  }
}
