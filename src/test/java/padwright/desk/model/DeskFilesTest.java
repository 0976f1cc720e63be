package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.Job;
import padwright.desk.edit.PartEdit.Step;
import padwright.desk.edit.Shipped;
import padwright.jobfile.JobWriter;

/**
 * Where a job comes from and goes to: nothing that was typed is lost, and every refusal is said.
 */
class DeskFilesTest {
  private static final long OWN = 99_999_999_998L;

  @TempDir Path folder;

  private final ByHand work = new ByHand();
  private final ByHand window = new ByHand();
  private final ByHand disk = new ByHand();
  private final List<String> problems = new ArrayList<>();
  private final List<String> said = new ArrayList<>();
  private Desk desk;
  private DeskFiles files;
  private Settings settings;
  private Path kept;

  @BeforeEach
  void start() {
    kept = folder.resolve("kept");
    settings = new Settings(kept);
    desk = new Desk(Shipped.CATALOGUE, Shipped.demo(), window, work, new FaultLog(kept));
    files = new DeskFiles(desk, settings, window, disk, OWN);
    settled();
  }

  private void settled() {
    do {
      work.all();
      disk.all();
      window.all();
    } while (work.waiting() + disk.waiting() > 0);
  }

  private Path copy() {
    return kept.resolve("unsaved-" + OWN + ".json");
  }

  private void rename(String name) {
    assertThat(desk.type(desk.field("name").orElseThrow(), name)).isEmpty();
    settled();
  }

  @Test
  void aJobIsOpenedEditedAndSavedWhereItCameFrom() throws IOException {
    Path file = Files.writeString(folder.resolve("nook.json"), JobWriter.write(Shipped.demo()));
    files.open(file, problems::add);
    settled();
    assertThat(files.file()).contains(file);
    assertThat(files.name()).isEqualTo("nook.json");
    assertThat(settings.recent()).containsExactly(file.toAbsolutePath());
    assertThat(desk.unsaved()).isFalse();
    assertThat(copy()).doesNotExist();
    rename("Rest by the window");
    assertThat(copy()).content().contains("Rest by the window");
    assertThat(file).content().doesNotContain("Rest by the window");
    files.save(problems::add, () -> said.add("saved"));
    settled();
    assertThat(said).containsExactly("saved");
    assertThat(Shipped.READER.read(file)).isEqualTo(desk.job());
    assertThat(desk.unsaved()).isFalse();
    assertThat(copy()).doesNotExist();
    assertThat(problems).isEmpty();
  }

  @Test
  void aFileThatIsNoJobLeavesTheDeskAsItWas() throws IOException {
    rename("Rest by the window");
    Job before = desk.job();
    Path bad = Files.writeString(folder.resolve("bad.json"), "{\"format\": \"padwright-job\"}");
    files.open(bad, problems::add);
    files.open(folder.resolve("none.json"), problems::add);
    settled();
    assertThat(problems).hasSize(2);
    assertThat(problems.get(0)).contains("bad.json");
    assertThat(problems.get(1)).contains("none.json");
    assertThat(desk.job()).isEqualTo(before);
    assertThat(desk.unsaved()).isTrue();
    assertThat(files.file()).isEmpty();
    assertThat(copy()).exists();
  }

  @Test
  void whatCannotBeSavedStaysUnsavedWithItsCopy() {
    rename("Rest by the window");
    files.saveAs(folder.resolve("no/such/nook.json"), problems::add, () -> said.add("saved"));
    settled();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0)).contains("no such folder");
    assertThat(said).isEmpty();
    assertThat(desk.unsaved()).isTrue();
    assertThat(files.file()).isEmpty();
    assertThat(copy()).content().contains("Rest by the window");
  }

  /** Changes made while the disk is busy with an earlier state are not taken for saved. */
  @Test
  void whatIsTypedDuringASaveIsStillUnsaved() {
    rename("One");
    files.saveAs(folder.resolve("nook.json"), problems::add, () -> said.add("saved"));
    desk.type(desk.field("name").orElseThrow(), "Two");
    settled();
    assertThat(said).containsExactly("saved");
    assertThat(desk.unsaved()).isTrue();
    assertThat(folder.resolve("nook.json")).content().contains("One").doesNotContain("Two");
    assertThat(copy()).content().contains("Two");
  }

  @Test
  void ofManyChangesThatWaitTheNewestIsKept() {
    for (String name : List.of("One", "Two", "Three")) {
      desk.type(desk.field("name").orElseThrow(), name);
    }
    assertThat(disk.waiting()).isEqualTo(1);
    settled();
    assertThat(copy()).content().contains("Three").doesNotContain("One");
  }

  @Test
  void aCopyThatCouldNotBeWrittenIsTriedAgain() throws IOException {
    Files.writeString(kept, "a file where the folder should be");
    rename("One");
    assertThat(Files.exists(copy())).isFalse();
    Files.delete(kept);
    rename("Two");
    assertThat(copy()).content().contains("Two");
  }

  @Test
  void whatWasLeftIsPutBackAndThenItsOldCopyGoes() throws IOException {
    Path home = folder.resolve("nook.json");
    new Recovery(kept, OWN - 1).keep(Shipped.everyField(), Optional.of(home));
    List<DeskFiles.Unsaved> left = files.unsaved();
    assertThat(left).hasSize(1);
    assertThat(left.get(0).file()).contains(home.toAbsolutePath());
    assertThat(left.get(0).when()).matches("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d");
    files.recover(left.get(0), problems::add);
    settled();
    assertThat(desk.job()).isEqualTo(Shipped.everyField());
    assertThat(desk.unsaved()).isTrue();
    assertThat(files.file()).contains(home.toAbsolutePath());
    assertThat(copy()).exists();
    assertThat(left.get(0).copy()).doesNotExist();
    files.close();
    assertThat(copy()).doesNotExist();
  }

  @Test
  void whatWasLeftSpoiltIsSaidAndNotTakenAway() throws IOException {
    new Recovery(kept, OWN - 1).keep(Shipped.demo(), Optional.empty());
    DeskFiles.Unsaved left = files.unsaved().get(0);
    Files.writeString(left.copy(), "{");
    files.recover(left, problems::add);
    settled();
    assertThat(problems).hasSize(1);
    assertThat(left.copy()).exists();
    assertThat(desk.unsaved()).isFalse();
    files.forget(left);
    assertThat(files.unsaved()).isEmpty();
  }

  @Test
  void aReadyMadeJobHasNoFileYet() {
    files.begin(Shipped.everyField());
    settled();
    assertThat(files.file()).isEmpty();
    assertThat(files.name()).isEqualTo(Shipped.everyField().title());
    assertThat(settings.recent()).isEmpty();
  }

  @Test
  void whatIsDroppedIsToldByItsEnding() throws IOException {
    for (String name : List.of("a.json", "b.SVG", "c.dxf", "d.txt")) {
      Files.writeString(folder.resolve(name), "");
    }
    assertThat(DeskFiles.kind(folder.resolve("a.json"))).isEqualTo(DeskFiles.Dropped.JOB);
    assertThat(DeskFiles.kind(folder.resolve("b.SVG"))).isEqualTo(DeskFiles.Dropped.DRAWING);
    assertThat(DeskFiles.kind(folder.resolve("c.dxf"))).isEqualTo(DeskFiles.Dropped.DRAWING);
    assertThat(DeskFiles.kind(folder.resolve("d.txt"))).isEqualTo(DeskFiles.Dropped.OTHER);
    assertThat(DeskFiles.kind(folder.resolve("none.json"))).isEqualTo(DeskFiles.Dropped.OTHER);
    assertThat(DeskFiles.kind(folder)).isEqualTo(DeskFiles.Dropped.OTHER);
  }

  /** A drawing of 400 x 300 mm becomes the outline of the part on the bench, one step to undo. */
  @Test
  void aDrawingBecomesTheOutline() throws IOException {
    desk.look(indexOf("stool-top"));
    settled();
    desk.change(p -> desk.edit().with(p, Step.remove("base.holes")), "holes", "");
    desk.change(p -> desk.edit().with(p, Step.remove("host.positions")), "fixing", "");
    Path drawing =
        Files.writeString(
            folder.resolve("seat.svg"),
            "<svg xmlns='http://www.w3.org/2000/svg' width='500mm' height='400mm'"
                + " viewBox='0 0 500 400'><path d='M10 10 H410 V310 H10 Z'/></svg>");
    files.draw(drawing, problems::add, said::add);
    settled();
    assertThat(problems).isEmpty();
    assertThat(said).hasSize(1);
    assertThat(desk.toUndo()).contains("outline from seat.svg");
    var base = desk.bench().result().orElseThrow().figures().base();
    assertThat(base.length()).isCloseTo(400, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(base.width()).isCloseTo(300, org.assertj.core.api.Assertions.within(1e-9));
    Path empty =
        Files.writeString(
            folder.resolve("empty.svg"), "<svg xmlns='http://www.w3.org/2000/svg'></svg>");
    Job before = desk.job();
    files.draw(empty, problems::add, said::add);
    settled();
    assertThat(problems).hasSize(1);
    assertThat(desk.job()).isEqualTo(before);
  }

  private int indexOf(String id) {
    return desk.job().parts().stream().map(p -> p.id()).toList().indexOf(id);
  }
}
