package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Open;
import padwright.desk.edit.PartEdit.Step;
import padwright.measure.InputRefused;

/** One side changed by itself, whatever run it was in. */
class RunEditTest {
  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);
  private final WrappedPad seat = Shipped.demo("window-seat");

  private WrappedPad typed(WrappedPad pad, String side, String field, String text) {
    return new RunEdit(edit, pad).typed(side, field(pad, side, field), text);
  }

  private static PartField field(WrappedPad pad, String side, String name) {
    return RunEdit.fields(pad, side).stream()
        .filter(f -> f.place().endsWith("]." + name))
        .findFirst()
        .orElseThrow();
  }

  private String shown(WrappedPad pad, String side, String name) {
    return edit.shown(pad, field(pad, side, name));
  }

  private static List<List<String>> sides(WrappedPad pad) {
    return pad.runs().stream().map(WrappedPad.Run::sides).toList();
  }

  @Test
  void aSideInNoRunIsGivenOneOfItsOwn() {
    WrappedPad next = typed(seat, "side 1", "edge", "round");
    assertThat(sides(next)).containsExactly(List.of("side 2", "side 4"), List.of("side 1"));
    assertThat(next.runs().get(0)).isEqualTo(seat.runs().get(0));
    assertThat(next.runs().get(1).edge()).containsInstanceOf(EdgeShape.Round.class);
    WrappedPad sized = typed(next, "side 1", "edge.round", "4+4");
    assertThat(sized.runs().get(1).edge()).contains(new EdgeShape.Round(8));
    assertThat(shown(sized, "side 1", "edge")).isEqualTo("round");
    assertThat(shown(sized, "side 1", "edge.round")).isEqualTo("8");
    assertThat(shown(sized, "side 3", "edge")).isEmpty();
  }

  @Test
  void aSideInARunWithOthersIsSplitOffIt() {
    WrappedPad next = typed(seat, "side 4", "turnUnder", "28");
    assertThat(sides(next)).containsExactly(List.of("side 2"), List.of("side 4"));
    assertThat(next.runs().get(0).turnUnder()).isEqualTo(seat.runs().get(0).turnUnder());
    assertThat(next.runs().get(1).turnUnder()).isEqualTo(OptionalDouble.of(28));
    // The same again as the other: one run.
    assertThat(typed(next, "side 4", "turnUnder", "35")).isEqualTo(seat);
  }

  @Test
  void aRunThatDiffersInNothingGoes() {
    WrappedPad one = typed(seat, "side 2", "turnUnder", "");
    assertThat(sides(one)).containsExactly(List.of("side 4"));
    WrappedPad none = typed(one, "side 4", "turnUnder", "");
    assertThat(none.runs()).isEmpty();
    assertThat(typed(typed(none, "side 2", "turnUnder", "35"), "side 4", "turnUnder", "35"))
        .isEqualTo(seat);
  }

  @Test
  void anOpenSideHasNoTurnUnder() {
    WrappedPad open = typed(seat, "side 2", "open", "glued");
    assertThat(RunEdit.run(open, "side 2").orElseThrow().open()).contains(Open.GLUED);
    assertThat(RunEdit.run(open, "side 2").orElseThrow().turnUnder()).isEmpty();
    assertThat(RunEdit.run(open, "side 4"))
        .contains(
            RunEdit.run(seat, "side 4")
                .map(
                    r ->
                        new WrappedPad.Run(
                            List.of("side 4"), r.edge(), r.turnUnder(), r.overhang(), r.open()))
                .orElseThrow());
    assertThatThrownBy(() -> typed(open, "side 2", "turnUnder", "20"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("open run has no turn-under");
  }

  @Test
  void aPassageGoesWithTheEdgeItLeadsFrom() {
    WrappedPad edged = typed(typed(seat, "side 1", "edge", "bevel"), "side 1", "passage", "120");
    assertThat(RunEdit.run(edged, "side 1").orElseThrow().passage()).hasValue(120);
    WrappedPad plain = typed(edged, "side 1", "edge", "");
    assertThat(plain).isEqualTo(seat);
    assertThatThrownBy(() -> typed(seat, "side 1", "passage", "120"))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("passage leads from");
  }

  @Test
  void aRefusalChangesNothingAndNamesTheField() {
    assertThatThrownBy(() -> typed(seat, "side 1", "turnUnder", "wide"))
        .isInstanceOfSatisfying(
            InputRefused.class, r -> assertThat(r.path()).isEqualTo("runs[1].turnUnder"));
    assertThat(typed(seat, "side 1", "overhang", " ")).isEqualTo(seat);
  }

  @Test
  void everySideOfEveryPartTakesEveryFieldOrRefusesItInWords() {
    int taken = 0;
    for (WrappedPad pad : Shipped.all()) {
      for (String side : RunEdit.sides(pad)) {
        for (PartField f : RunEdit.fields(pad, side)) {
          List<String> texts =
              f.choices().isEmpty()
                  ? List.of("5", "40", "")
                  : f.choices().stream().map(PartField.Choice::value).toList();
          for (String text : texts) {
            try {
              WrappedPad next = new RunEdit(edit, pad).typed(side, f, text);
              String name = f.place().substring(f.place().indexOf('.') + 1);
              assertThat(shown(next, side, name)).isEqualTo(text);
              taken++;
            } catch (InputRefused r) {
              assertThat(r.remedy()).isNotBlank();
            }
          }
        }
      }
    }
    assertThat(taken).isGreaterThan(300);
  }

  @Test
  void aRoundOutlineHasNoSides() {
    assertThat(RunEdit.sides(Shipped.demo("stool-top"))).isEmpty();
    WrappedPad square = edit.with(seat, Step.remove("runs"));
    assertThat(RunEdit.sides(square)).containsExactly("side 1", "side 2", "side 3", "side 4");
  }
}
