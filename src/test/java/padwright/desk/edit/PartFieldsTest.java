package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartField.Kind;
import padwright.measure.InputRefused;

/** Every field of every part that ships: shown, typed back, chosen, cleared. */
class PartFieldsTest {
  private static PartEdit edit(Units units) {
    return new PartEdit(Shipped.READER, units);
  }

  private static List<PartField> fields(WrappedPad pad) {
    return PartFields.of(pad, Shipped.CATALOGUE).stream()
        .flatMap(g -> g.fields().stream())
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void whatAFieldShowsTypedBackIsTheSamePart(Units units) {
    for (WrappedPad pad : Shipped.all()) {
      for (PartField field : fields(pad)) {
        String shown = edit(units).shown(pad, field);
        assertThat(edit(units).typed(pad, field, shown))
            .as(pad.id() + " " + field.place() + " " + shown)
            .isEqualTo(pad);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void aFieldThatMustBeFilledInShowsWhatItHolds(Units units) {
    for (WrappedPad pad : Shipped.all()) {
      for (PartField field : fields(pad)) {
        if (!field.optional()) {
          String shown = edit(units).shown(pad, field);
          assertThat(shown).as(pad.id() + " " + field.place()).isNotEmpty();
          if (field.kind() == Kind.CHOICE) {
            assertThat(field.choices()).extracting(PartField.Choice::value).contains(shown);
          }
        }
      }
    }
  }

  @Test
  void eachPlaceIsThereOnceInAPart() {
    for (WrappedPad pad : Shipped.all()) {
      Set<String> places = new HashSet<>();
      for (PartField field : fields(pad)) {
        assertThat(places.add(field.place())).as(pad.id() + " " + field.place()).isTrue();
      }
    }
  }

  /** The job of docs/job.md has every field, so together its parts show every kind of field. */
  @Test
  void everyWordOfTheJobFileHasAField() {
    StringBuilder places = new StringBuilder();
    Shipped.everyField()
        .parts()
        .forEach(p -> fields((WrappedPad) p).forEach(f -> places.append(f.place()).append('\n')));
    assertThat(places)
        .contains("base.clearance\n", "base.backArris\n", "wadding.over\n", "edge.bevel\n")
        .contains("corners.each[", "host.screwLength\n", "dustCover.turn\n", ".passage\n")
        .contains("fittings.tNuts[0].flange\n", "fittings.zones[0].kind\n", ".crown\n");
  }

  @ParameterizedTest
  @EnumSource
  void everyChoiceIsTakenAndShownOrRefusedInWords(Units units) {
    int taken = 0;
    List<String> refusals = new ArrayList<>();
    for (WrappedPad pad : Shipped.all()) {
      for (PartField field : fields(pad)) {
        for (PartField.Choice choice : field.choices()) {
          try {
            WrappedPad next = edit(units).typed(pad, field, choice.value());
            taken++;
            assertThat(edit(units).shown(next, field))
                .as(pad.id() + " " + field.place())
                .isEqualTo(choice.value());
          } catch (InputRefused r) {
            inWords(r);
            refusals.add(pad.id() + " " + field.place() + " " + choice.value() + ": " + r);
          } catch (RuntimeException e) {
            fail(pad.id() + " " + field.place() + " " + choice.value(), e);
          }
        }
      }
    }
    assertThat(taken).isGreaterThan(10 * refusals.size());
  }

  /** Whatever is typed into whatever field, it is taken or refused in words. */
  @Test
  void oddTextsAreTakenOrRefusedInWords() {
    for (WrappedPad pad : Shipped.all()) {
      for (PartField field : fields(pad)) {
        for (String typed :
            List.of(
                "",
                "x",
                "0",
                "-1",
                "1e999999999",
                "1e-2147483647",
                "1e2147483647",
                "\u0000",
                "\"",
                "9".repeat(400),
                "yes",
                "1/0",
                "{}",
                "null",
                "NaN",
                "%",
                "0.5",
                "\ud800")) {
          try {
            edit(Units.MM).typed(pad, field, typed);
          } catch (InputRefused r) {
            inWords(r);
          } catch (RuntimeException e) {
            fail(pad.id() + " " + field.place() + " " + typed, e);
          }
        }
      }
    }
  }

  @Test
  void aRefusalNamesTheFieldItIsAbout() {
    WrappedPad pad = Shipped.demo("desk-rest");
    PartField field = PartFields.at(pad, Shipped.CATALOGUE, "foam[0].thickness").orElseThrow();
    for (String typed : List.of("x", "0", "12+", "600")) {
      try {
        edit(Units.MM).typed(pad, field, typed);
        fail(typed);
      } catch (InputRefused r) {
        assertThat(r.path()).isEqualTo("foam[0].thickness");
      }
    }
  }

  @Test
  void whatMayBeLeftOutCanBeCleared() {
    for (WrappedPad pad : Shipped.all()) {
      for (PartField field : fields(pad)) {
        if (!field.optional()) {
          continue;
        }
        try {
          WrappedPad next = edit(Units.MM).typed(pad, field, " ");
          String shown = edit(Units.MM).shown(next, field);
          boolean choice = field.kind() == Kind.CHOICE;
          // Some choices show the word of the default; a neighbour stands with the other three.
          // What is taken off for stretch is written along and across together.
          boolean nought = field.kind() == Kind.PERCENT && shown.equals("0");
          assertThat(choice || nought || shown.isEmpty())
              .as(pad.id() + field.place() + shown)
              .isTrue();
          assertThat(edit(Units.MM).typed(next, field, "")).isEqualTo(next);
        } catch (InputRefused r) {
          inWords(r);
          // What another field needs cannot go before it.
          assertThat(field.place())
              .matches("foam\\[\\d]\\.overhang|runs.*|base\\.size|host\\.thickness");
        }
      }
    }
  }

  @Test
  void aLongTailOfDecimalsIsNotLostByLeavingAField() {
    WrappedPad pad =
        edit(Units.MM)
            .with(Shipped.demo("desk-rest"), PartEdit.Step.mm("cover.turnUnder", 20.123456789));
    for (Units units : Units.values()) {
      PartField field = PartFields.at(pad, Shipped.CATALOGUE, "cover.turnUnder").orElseThrow();
      String shown = edit(units).shown(pad, field);
      assertThat(edit(units).typed(pad, field, shown)).isEqualTo(pad);
      assertThat(shown.length()).isLessThan(14);
    }
  }

  @Test
  void flagsTakeYesAndNoAndNothingElse() {
    WrappedPad pad = Shipped.demo("desk-rest");
    PartField crown = PartFields.at(pad, Shipped.CATALOGUE, "foam[0].crown").orElseThrow();
    assertThat(edit(Units.MM).typed(pad, crown, "no").foam().get(0).crown()).isFalse();
    try {
      edit(Units.MM).typed(pad, crown, "ja");
      fail("taken");
    } catch (InputRefused r) {
      assertThat(r.path()).isEqualTo("foam[0].crown");
      assertThat(r.problem()).contains("ja");
    }
  }

  private static void inWords(InputRefused r) {
    assertThat(r.problem()).isNotBlank();
    assertThat(r.remedy()).isNotBlank();
    assertThat(r.path()).isNotBlank();
  }
}
