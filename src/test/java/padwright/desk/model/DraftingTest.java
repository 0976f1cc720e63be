package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Job;
import padwright.desk.edit.JobEdit;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.Shipped;
import padwright.export.pdf.PrintCorrection;
import padwright.material.Paper;
import padwright.measure.InputRefused;
import padwright.pattern.PatternEngine;

/** Drafting from the workbench: the folder is whole, or as it was. */
class DraftingTest {
  @TempDir Path folder;

  private static final Paper A4 = Shipped.CATALOGUE.paper("a4").orElseThrow();

  private static Drafting drafting(Job job) {
    return new Drafting(Shipped.CATALOGUE, job, A4, PrintCorrection.none());
  }

  /** The demo's rest alone, or with a leg that comes through: 16 - 1 in a board of 11.5. */
  private static Job rest(boolean through) {
    Job job = Shipped.demo();
    while (job.parts().size() > 1) {
      job = JobEdit.removed(job, 1);
    }
    PartEdit edit = new PartEdit(Shipped.READER, job.units());
    return through
        ? JobEdit.replaced(job, 0, edit.with(Shipped.demo("desk-rest"), Step.mm("staples.leg", 16)))
        : job;
  }

  private List<String> in(Path dir) throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      return all.filter(Files::isRegularFile).map(p -> dir.relativize(p).toString()).toList();
    }
  }

  @Test
  void everyFileItCountsIsThere() throws IOException {
    Path out = folder.resolve("out");
    List<Integer> progress = new ArrayList<>();
    Drafting.Outcome o = drafting(rest(false)).into(out, false, false, progress::add, () -> false);
    assertThat(o.written()).isTrue();
    assertThat(o.stopped()).isEmpty();
    assertThat(progress).containsExactly(1);
    assertThat(in(out)).hasSize(o.files()).contains("pieces.json", "desk-rest/desk-rest.pdf");
    // The same patterns once more: nothing else lies there, so it need not be told to replace.
    assertThat(drafting(rest(false)).into(out, false, true, n -> {}, () -> false).others())
        .isEmpty();
  }

  @Test
  void aStopKeepsTheFolderEmptyUnlessItIsWantedAnyway() throws IOException {
    Path out = folder.resolve("out");
    Drafting.Outcome o = drafting(rest(true)).into(out, false, false, n -> {}, () -> false);
    assertThat(o.written()).isFalse();
    assertThat(o.files()).isZero();
    assertThat(o.stopped()).containsExactly("Forearm rest, desk edge");
    assertThat(out).doesNotExist();
    Drafting.Outcome anyway = drafting(rest(true)).into(out, true, false, n -> {}, () -> false);
    assertThat(anyway.written()).isTrue();
    assertThat(anyway.stopped()).containsExactly("Forearm rest, desk edge");
    assertThat(in(out)).contains("desk-rest/desk-rest.pdf");
  }

  @Test
  void aCancelledRunLeavesNothing() throws IOException {
    Path out = folder.resolve("out");
    Drafting.Outcome o = drafting(rest(false)).into(out, false, false, n -> {}, () -> true);
    assertThat(o.written()).isFalse();
    assertThat(in(folder)).isEmpty();
  }

  @Test
  void otherPatternsInTheFolderAreNotWrittenOver() throws IOException {
    Path out = folder.resolve("out");
    drafting(rest(false)).into(out, false, false, n -> {}, () -> false);
    String before = Files.readString(out.resolve("pieces.json"));
    Job other = JobEdit.replaced(rest(false), 0, longer());
    assertThatThrownBy(() -> drafting(other).into(out, false, false, n -> {}, () -> false))
        .isInstanceOfAny(InputRefused.class, IOException.class);
    assertThat(out.resolve("pieces.json")).hasContent(before);
    drafting(other).into(out, false, true, n -> {}, () -> false);
    assertThat(Files.readString(out.resolve("pieces.json"))).isNotEqualTo(before);
  }

  private static padwright.design.WrappedPad longer() {
    return new PartEdit(Shipped.READER, Shipped.demo().units())
        .with(Shipped.demo("desk-rest"), Step.mm("base.outline.rectangle.length", 650));
  }

  /** ISO 216: A4 is 210 x 297 mm; a point is 1/72 in. */
  @Test
  void onePartIsPrintedOnThePaperAskedFor() throws IOException {
    Job job = rest(false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Drafting.page(
        job,
        new PatternEngine(Shipped.CATALOGUE).run(job.parts().get(0)),
        A4,
        PrintCorrection.none(),
        out);
    try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
      var box = pdf.getPage(0).getMediaBox();
      double shortSide = Math.min(box.getWidth(), box.getHeight());
      assertThat(shortSide / 72 * 25.4).isCloseTo(210, org.assertj.core.api.Assertions.within(0.1));
    }
  }
}
