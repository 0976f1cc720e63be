package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Kind;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** What the wrap map says and shows. */
class WrapMapTest {
  private static List<String> texts(PartResult part) {
    return WrapMap.of(Pieces.HEADER, part).items().stream()
        .filter(i -> i instanceof Drawing.Text)
        .map(i -> ((Drawing.Text) i).text())
        .toList();
  }

  @Test
  void everySideHasItsStripAndTheBackItsLayers() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.kind = Kind.SEAT;
    List<String> texts = texts(pads.run());

    assertThat(texts).anyMatch(t -> t.startsWith("The cover covers"));
    for (String side : List.of("front", "right", "back", "left")) {
      assertThat(texts).anyMatch(t -> t.contains(side) && t.contains("from outside"));
    }
    assertThat(texts).contains("1", "3");
  }

  @Test
  void whatTheProofFoundBareIsSaidFirst() {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.reliefStop = java.util.OptionalDouble.of(4);
    PartResult part = pads.run();

    assertThat(part.wrap().proved()).isFalse();
    assertThat(texts(part)).anyMatch(t -> t.startsWith("The cover does NOT cover"));
  }

  @Test
  void aRoundPartShowsItsPleatsOnTheRim() {
    Pads pads = new Pads();
    pads.outline = new OutlineShape.Circle(320);
    assertThat(texts(pads.run())).anyMatch(t -> t.startsWith("rim from behind"));
  }
}
