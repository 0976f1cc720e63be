package padwright.desk.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import padwright.design.Job;
import padwright.design.PaddedPart;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.desk.edit.PartEdit.Step;
import padwright.jobfile.JobWriter;
import padwright.measure.InputRefused;

/** Parts of a job and entries of a part's lists: put in, moved, doubled, taken out. */
class JobEditTest {
  private final PartEdit edit = new PartEdit(Shipped.READER, Units.MM);

  private static List<String> ids(Job job) {
    return job.parts().stream().map(PaddedPart::id).toList();
  }

  @Test
  void aPartDoubledHasAnIdOfItsOwnAndIsElseTheSame() {
    Job job = Shipped.demo();
    Job twice = JobEdit.duplicated(job, 0, Shipped.READER);
    assertThat(ids(twice).subList(0, 2)).containsExactly("desk-rest", "desk-rest-2");
    WrappedPad copy = (WrappedPad) twice.parts().get(1);
    assertThat(edit.with(copy, Step.put("id", "desk-rest"))).isEqualTo(job.parts().get(0));
    Job thrice = JobEdit.duplicated(twice, 1, Shipped.READER);
    assertThat(ids(thrice).subList(0, 3))
        .containsExactly("desk-rest", "desk-rest-2", "desk-rest-3");
  }

  @Test
  void idsStayDifferentHoweverOftenAPartIsDoubled() {
    Job job = Shipped.demo();
    for (int i = 0; i < 30; i++) {
      job = JobEdit.duplicated(job, (7 * i) % job.parts().size(), Shipped.READER);
    }
    Set<String> ids = new HashSet<>();
    job.parts().forEach(p -> assertThat(ids.add(p.id().toLowerCase(Locale.ROOT))).isTrue());
    // What is saved can be opened again.
    assertThat(Shipped.READER.read("job", JobWriter.write(job))).isEqualTo(job);
  }

  @Test
  void theLongestIdThereMayBeIsShortenedForItsNumber() {
    String longest = "a".repeat(60);
    WrappedPad pad = edit.with(Shipped.demo("desk-rest"), Step.put("id", longest));
    Job job = JobEdit.inserted(Shipped.demo(), 0, pad, Shipped.READER);
    Job twice = JobEdit.duplicated(job, 0, Shipped.READER);
    assertThat(twice.parts().get(1).id()).hasSize(60).endsWith("-2");
    // An id that differs in capitals alone is taken.
    Job capitals =
        JobEdit.inserted(job, 0, edit.with(pad, Step.put("id", "DESK-REST")), Shipped.READER);
    assertThat(capitals.parts().get(0).id()).isEqualTo("DESK-REST-2");
  }

  @Test
  void partsAreMovedAndTakenOutAndOneStays() {
    Job job = Shipped.demo();
    List<String> ids = ids(job);
    Job moved = JobEdit.moved(job, 0, 2);
    assertThat(ids(moved)).startsWith(ids.get(1), ids.get(2), ids.get(0));
    assertThat(JobEdit.moved(moved, 2, 0)).isEqualTo(job);
    Job less = job;
    while (less.parts().size() > 1) {
      less = JobEdit.removed(less, less.parts().size() - 1);
    }
    assertThat(ids(less)).containsExactly(ids.get(0));
    Job one = less;
    assertThatThrownBy(() -> JobEdit.removed(one, 0))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("last part");
  }

  @Test
  void aHeadingWithoutClientOrDateHasNone() {
    Job headed = JobEdit.headed(Shipped.demo(), "Nook", " ", "", Units.INCH);
    assertThat(headed.client()).isEqualTo(Optional.empty());
    assertThat(headed.date()).isEqualTo(Optional.empty());
    assertThat(headed.units()).isEqualTo(Units.INCH);
    assertThat(headed.parts()).isEqualTo(Shipped.demo().parts());
  }

  @Test
  void foamIsPutInMovedAndTakenOut() {
    WrappedPad pad = Shipped.demo("desk-rest");
    WrappedPad three =
        edit.inserted(pad, "foam", 1, java.util.Map.of("foam", "medium", "thickness", "20 mm"));
    assertThat(three.foam())
        .extracting(WrappedPad.FoamLayer::thickness)
        .containsExactly(12d, 20d, 12d);
    assertThat(edit.entries(three, "foam")).isEqualTo(3);
    WrappedPad moved = edit.moved(three, "foam", 1, 0);
    assertThat(moved.foam().get(0).thickness()).isEqualTo(20);
    assertThat(edit.with(moved, Step.remove("foam[0]"))).isEqualTo(pad);
    assertThatThrownBy(() -> edit.with(pad, Step.remove("foam[1]"), Step.remove("foam[0]")))
        .isInstanceOf(InputRefused.class);
  }

  @Test
  void whateverCanBeAddedIsTakenOrRefusedInWords() {
    int added = 0;
    for (WrappedPad pad : Shipped.all()) {
      for (PartListFields.Kinds kind : PartListFields.kinds(pad)) {
        int before = edit.entries(pad, kind.place());
        try {
          WrappedPad more = edit.inserted(pad, kind.place(), before, kind.fresh());
          assertThat(edit.entries(more, kind.place())).isEqualTo(before + 1);
          WrappedPad back = edit.with(more, Step.remove(kind.place() + "[" + before + "]"));
          assertThat(back).isEqualTo(pad);
          added++;
        } catch (InputRefused r) {
          assertThat(r.problem()).isNotBlank();
          assertThat(r.remedy()).isNotBlank();
        }
      }
    }
    assertThat(added).isGreaterThan(50);
  }

  @Test
  void aFurtherRunTakesASideThatIsInNone() {
    WrappedPad pad = Shipped.demo("reading-chair");
    for (int i = 0; i < 4; i++) {
      Object fresh =
          PartListFields.kinds(pad).stream()
              .filter(k -> k.place().equals("runs"))
              .findFirst()
              .orElseThrow()
              .fresh();
      pad = edit.inserted(pad, "runs", i, fresh);
    }
    assertThat(pad.runs())
        .extracting(r -> r.sides().get(0))
        .containsExactly("front", "right", "back", "left");
  }

  @Test
  void allFourNeighboursAreWrittenWhenOneIsChosen() {
    WrappedPad pad = Shipped.demo("reading-chair");
    for (String side : List.of("front", "right", "back", "left")) {
      PartField field = PartFields.at(pad, Shipped.CATALOGUE, "base.sides." + side).orElseThrow();
      for (PartField.Choice c : field.choices()) {
        WrappedPad next = edit.typed(pad, field, c.value());
        assertThat(edit.shown(next, field)).isEqualTo(c.value());
        for (String other : List.of("front", "right", "back", "left")) {
          if (!other.equals(side)) {
            PartField f =
                PartFields.at(pad, Shipped.CATALOGUE, "base.sides." + other).orElseThrow();
            assertThat(edit.shown(next, f)).isEqualTo(edit.shown(pad, f));
          }
        }
      }
    }
  }

  @Test
  void cornersGoFromOneTreatmentToEachItsOwnAndBack() {
    WrappedPad pad = Shipped.demo("corner-bench");
    PartField all = PartFields.at(pad, Shipped.CATALOGUE, "corners.treatment").orElseThrow();
    WrappedPad each = edit.typed(pad, all, PartFields.EACH);
    assertThat(each.corners().treatments()).hasSize(6);
    assertThat(edit.shown(each, all)).isEqualTo(PartFields.EACH);
    PartField third = PartFields.at(each, Shipped.CATALOGUE, "corners.each[2]").orElseThrow();
    WrappedPad mixed = edit.typed(each, third, "double pleat");
    assertThat(mixed.corners().treatments().get(2)).isEqualTo(WrappedPad.Treatment.DOUBLE_PLEAT);
    WrappedPad again = edit.typed(mixed, all, "single pleat");
    assertThat(again.corners().treatments()).containsExactly(WrappedPad.Treatment.SINGLE_PLEAT);
    WrappedPad none = edit.typed(mixed, all, "");
    assertThat(none.corners().treatments()).containsExactly(WrappedPad.Treatment.AUTO);
  }

  @Test
  void everySideOfARunIsAField() {
    WrappedPad pad = Shipped.demo("window-seat");
    assertThat(pad.runs().get(0).sides()).containsExactly("side 2", "side 4");
    for (int k = 0; k < 2; k++) {
      PartField side =
          PartFields.at(pad, Shipped.CATALOGUE, "runs[0].sides[" + k + "]").orElseThrow();
      WrappedPad next = edit.typed(pad, side, "side 1");
      assertThat(next.runs().get(0).sides().get(k)).isEqualTo("side 1");
      assertThatThrownBy(() -> edit.typed(pad, side, "side 9")).isInstanceOf(InputRefused.class);
    }
  }
}
