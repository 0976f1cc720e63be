package padwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.Fittings.ZoneKind;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.export.Drawing.LineStyle;
import padwright.export.Drawing.Stroke;
import padwright.pattern.FittedPads;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternPiece.Kind;

/** The pieces of a panel with a socket's cut-out, drawn. */
class CutOutPictureTest {
  private static final PartHeader HEADER =
      new PartHeader("Reading nook", "Socket panel", "socket-panel", 1, 0, "2026-03-07", Units.MM);

  private static PartResult panel() {
    return new FittedPads()
        .cut(Pads.rectangle(150, 90), 120, -60)
        .cut(new OutlineShape.Circle(100), -160, 80)
        .vent(-60, -80, 25)
        .insert(180, 120)
        .zone(ZoneKind.HOOK_AND_LOOP, -170, -120, 180, 50)
        .run();
  }

  private static Drawing drawn(Kind kind) {
    PatternPiece piece = panel().piece(kind).orElseThrow();
    return PieceDrawing.of(HEADER, piece);
  }

  private static List<Stroke> strokes(Drawing d, LineStyle style) {
    return d.items().stream()
        .filter(i -> i instanceof Stroke s && s.style() == style)
        .map(i -> (Stroke) i)
        .toList();
  }

  @Test
  void theSlitsHaveALineOfTheirOwnAndTheLegendSaysWhen() {
    Drawing cover = drawn(Kind.COVER);
    assertThat(strokes(cover, LineStyle.SLIT)).hasSizeGreaterThan(5 + 20);
    assertThat(LabelPlacementTest.words(cover)).contains("slit: cut last, when stapled all round");
    assertThat(strokes(cover, LineStyle.INNER_CUT)).isEmpty();
  }

  @Test
  void theBaseNamesWhatIsInIt() {
    Drawing base = drawn(Kind.BASE);
    assertThat(strokes(base, LineStyle.INNER_CUT)).hasSize(4);
    assertThat(strokes(base, LineStyle.ZONE)).isNotEmpty();
    assertThat(LabelPlacementTest.words(base))
        .anyMatch(w -> w.startsWith("cut-out 1"))
        .anyMatch(w -> w.startsWith("vent"))
        .anyMatch(w -> w.startsWith("T-nut"))
        .contains("zone for hook-and-loop or tape");
  }

  @Test
  void noLabelLiesOnALine() {
    for (Kind kind : List.of(Kind.BASE, Kind.FOAM, Kind.COVER, Kind.DUST_COVER, Kind.PACKING)) {
      LabelInk.check(kind.name(), drawn(kind));
    }
  }
}
