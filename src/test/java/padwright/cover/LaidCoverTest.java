package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Bounds;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** The sheets of a cover laid back on the pad, which the wrap map draws. */
class LaidCoverTest {
  private static PartResult pad(OutlineShape outline, Treatment treatment, EdgeShape edge) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.kind = Kind.SEAT;
    pads.edge = edge;
    pads.treatments = List.of(treatment);
    return pads.run();
  }

  private static List<LaidCover.Sheet> back(PartResult part) {
    return new LaidCover(part.cover().trim().flattened(0.01), part.cover().skeleton()).back();
  }

  private static int layers(List<LaidCover.Sheet> sheets, Vec2 p) {
    return sheets.stream()
        .filter(s -> Polygons.contains(s.polygon(), p))
        .mapToInt(LaidCover.Sheet::layers)
        .sum();
  }

  /** The same places as worked out by hand for {@link LayerCounter}: flaps of 12, turn-under 20. */
  @Test
  void twoTurnUndersAndTheFlapsBetweenThemLieOverABackCorner() {
    List<LaidCover.Sheet> sheets =
        back(pad(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, new EdgeShape.Square()));

    assertThat(layers(sheets, new Vec2(0, -140))).isEqualTo(1);
    assertThat(layers(sheets, new Vec2(0, 0))).isZero();
    assertThat(layers(sheets, new Vec2(184, -134))).isEqualTo(2);
    assertThat(layers(sheets, new Vec2(192, -134))).isEqualTo(3);
  }

  /** Two ways to the same number: sheets laid down, and a count of what lands on a place. */
  @Test
  void sheetsLieWhereTheCounterFindsLayers() {
    Random random = new Random(20261125);
    List<PartResult> parts =
        List.of(
            pad(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, new EdgeShape.Square()),
            pad(Pads.rectangle(400, 300), Treatment.DOUBLE_PLEAT, new EdgeShape.Square()),
            pad(Pads.rectangle(300, 60), Treatment.MITRED_END, new EdgeShape.Round(6)),
            pad(Pads.rectangle(400, 300, 40), Treatment.AUTO, new EdgeShape.Square()),
            pad(new OutlineShape.Circle(320), Treatment.AUTO, new EdgeShape.Bevel(8)),
            pad(new OutlineShape.Trapezoid(420, 340, 380), Treatment.AUTO, new EdgeShape.Square()));
    int places = 0;
    int unlike = 0;
    for (PartResult part : parts) {
      List<LaidCover.Sheet> sheets = back(part);
      LayerCounter counter =
          new LayerCounter(part.cover().trim().flattened(0.01), part.cover().skeleton());
      Bounds b = part.shape().outline().bounds();
      List<Vec2> outline = part.shape().outline().flattened(0.01);
      for (int i = 0; i < 400; i++) {
        Vec2 p =
            new Vec2(
                b.minX() + random.nextDouble() * b.width(),
                b.minY() + random.nextDouble() * b.height());
        if (Polygons.contains(outline, p)) {
          places++;
          unlike += layers(sheets, p) == counter.at(p) ? 0 : 1;
        }
      }
    }
    // A place within rounding of a sheet's edge may be told either way.
    assertThat(unlike).as("of %s places", places).isLessThanOrEqualTo(places / 200);
  }
}
