package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftCommandTest {
  @TempDir private Path folder;

  private String job(double board, double leg) throws IOException {
    return Cli.write(folder.resolve("job.json"), Cli.rest(board, leg));
  }

  private String out() {
    return folder.resolve("out").toString();
  }

  private Cli.Said svg(String job, String... more) {
    String[] args = new String[6 + more.length];
    System.arraycopy(
        new String[] {"draft", job, "--out", out(), "--svg-only", "--date=2026-03-07"},
        0,
        args,
        0,
        6);
    System.arraycopy(more, 0, args, 6, more.length);
    return Cli.run(args);
  }

  @Test
  void everyPieceSectionAndCornerIsDrawn() throws IOException {
    Cli.Said said = svg(Cli.DEMO);
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(Cli.contents(folder.resolve("out")).keySet())
        .contains("desk-rest/base.svg", "desk-rest/foam-1.svg", "desk-rest/foam-2.svg")
        .contains("desk-rest/cover.svg", "desk-rest/dust-cover.svg", "desk-rest/section.svg")
        .contains("desk-rest/corner-mitred-end.svg", "stool-top/wadding.svg")
        .noneMatch(name -> name.endsWith(".pdf") || name.endsWith(".json") || name.contains("/."));
    assertThat(said.out()).contains("Forearm rest, desk edge", "desk-rest");
  }

  @Test
  void piecesOfEveryPartAreWrittenAsNumbers() throws IOException {
    assertThat(Cli.run("draft", Cli.DEMO, "--out", out()).status()).isZero();
    JsonNode all = new ObjectMapper().readTree(folder.resolve("out/pieces.json").toFile());
    assertThat(all.get("parts").findValuesAsText("id"))
        .contains("desk-rest", "stool-top", "reading-chair", "wall-panel");
  }

  @Test
  void pdfHasThePaperAskedFor() throws IOException {
    String job = job(12, 8);
    Cli.Said said = Cli.run("draft", job, "--out", out(), "--paper", "Letter", "--date=2026-03-07");
    assertThat(said.status()).isZero();
    Path pdf = folder.resolve("out/rest/rest.pdf");
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDRectangle sheet = document.getPage(0).getMediaBox();
      // ANSI/ASME Y14.1 A: 8.5 x 11 in, at 72 points an inch; a float holds it to 1e-4.
      assertThat(sheet.getWidth()).isCloseTo(612f, within(1e-3f));
      assertThat(sheet.getHeight()).isCloseTo(792f, within(1e-3f));
    }
    Cli.Said again =
        Cli.run("draft", job, "--out", out(), "--paper", "Letter", "--date=2026-03-07");
    assertThat(again.status()).as("the same job gives the same bytes").isZero();
    assertThat(again.out()).contains("there already, unchanged");
  }

  @Test
  void mirroredCopiesOfAnUnevenPartGetTheirOwnPatterns() throws IOException {
    String uneven =
        Cli.rest(12, 8)
            .replace("\"name\": \"Rest\",", "\"name\": \"Rest\", \"mirrored\": 1,")
            .replace(
                "\"board\":",
                "\"holes\": [ { \"x\": 150, \"y\": 5, \"diameter\": 8 } ], \"board\":");
    assertThat(svg(Cli.write(folder.resolve("job.json"), uneven)).status()).isZero();
    String drawn = Files.readString(folder.resolve("out/rest/base.svg"));
    String mirrored = Files.readString(folder.resolve("out/rest/base-mirrored.svg"));
    assertThat(mirrored).isNotEqualTo(drawn);
    assertThat(folder.resolve("out/rest/foam-1-mirrored.svg"))
        .as("a plain rectangle of foam serves both hands")
        .doesNotExist();
  }

  @Test
  void stopWritesNothing() throws IOException {
    String job = job(9, 12);
    Map<String, String> before = Cli.contents(folder);
    Cli.Said said = svg(job);
    assertThat(said.status()).isEqualTo(1);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("Rest (rest)", "stop ", "Nothing was written", "--anyway");
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void anywayDrawsButKeepsTheStatus() throws IOException {
    Cli.Said said = svg(job(9, 12), "--anyway");
    assertThat(said.status()).isEqualTo(1);
    assertThat(folder.resolve("out/rest/cover.svg")).exists();
    assertThat(said.out()).contains("1 stop");
  }

  @Test
  void sameFilesAgainAreFine() throws IOException {
    String job = job(12, 8);
    assertThat(svg(job).status()).isZero();
    Map<String, String> before = Cli.contents(folder);
    Cli.Said again = svg(job);
    assertThat(again.status()).isZero();
    assertThat(again.out()).contains("there already, unchanged");
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void otherPatternsAreNotOverwrittenWithoutReplace() throws IOException {
    assertThat(svg(job(12, 8)).status()).isZero();
    String other = Cli.write(folder.resolve("job.json"), Cli.rest(12, 8).replace("600", "610"));
    Map<String, String> before = Cli.contents(folder);
    Cli.Said refused = svg(other);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err()).contains("rest/base.svg", "--replace");
    assertThat(Cli.contents(folder)).isEqualTo(before);
    assertThat(svg(other, "--replace").status()).isZero();
    assertThat(Cli.contents(folder)).isNotEqualTo(before);
    assertThat(Cli.contents(folder).keySet()).isEqualTo(before.keySet());
  }

  @Test
  void filesOfSomeoneElseAreLeftAlone() throws IOException {
    Files.createDirectory(folder.resolve("out"));
    Cli.write(folder.resolve("out/shopping.txt"), "vinyl");
    Cli.Said refused = svg(job(12, 8));
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("not of this job", "shopping.txt");
    Cli.Said said = svg(job(12, 8), "--replace");
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("Left alone", "shopping.txt");
    assertThat(folder.resolve("out/shopping.txt")).hasContent("vinyl");
    assertThat(folder.resolve("out/rest/cover.svg")).exists();
  }

  @Test
  void emptyFolderIsFilled() throws IOException {
    Files.createDirectory(folder.resolve("out"));
    assertThat(svg(job(12, 8)).status()).isZero();
    assertThat(folder.resolve("out/rest/cover.svg")).exists();
  }

  @Test
  void fileWhereTheFolderShouldBeCannotBeWritten() throws IOException {
    Cli.write(folder.resolve("out"), "a file");
    String job = job(12, 8);
    Map<String, String> before = Cli.contents(folder);
    Cli.Said said = svg(job, "--replace");
    assertThat(said.status()).isEqualTo(3);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).startsWith("Cannot write: ").contains("a file has this name");
    Cli.Said below = Cli.run("draft", job, "--svg-only", "--out", out() + "/deep/down");
    assertThat(below.status()).isEqualTo(3);
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void folderThatCannotBeFinishedIsAsBefore() throws IOException {
    assertThat(svg(job(12, 8)).status()).isZero();
    // The second part's folder cannot be made: a file has its name.
    Cli.write(folder.resolve("out/zz"), "in the way");
    String one = Cli.rest(12, 8).replace("600", "610");
    String part = one.substring(one.indexOf("{ \"id\""), one.lastIndexOf("] }"));
    String two =
        one.substring(0, one.lastIndexOf("] }"))
            + ", "
            + part.replace("\"id\": \"rest\"", "\"id\": \"zz\"")
            + "] }";
    String job = Cli.write(folder.resolve("job.json"), two);
    Map<String, String> before = Cli.contents(folder);
    Cli.Said said = svg(job, "--replace");
    assertThat(said.status()).isEqualTo(3);
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void foldersAboveAreMadeOnlyWhenAllIsWell() throws IOException {
    String deep = folder.resolve("a/b/c").toString();
    Cli.Said stopped = Cli.run("draft", job(9, 12), "--svg-only", "--out", deep);
    assertThat(stopped.status()).isEqualTo(1);
    assertThat(folder.resolve("a")).doesNotExist();
    assertThat(Cli.run("draft", job(12, 8), "--svg-only", "--out", deep).status()).isZero();
    assertThat(folder.resolve("a/b/c/rest/base.svg")).exists();
  }

  @Test
  void wrongOptionsAreRefusedAndNothingIsWritten() throws IOException {
    String job = job(12, 8);
    Map<String, String> before = Cli.contents(folder);
    Cli.Said paper = svg(job, "--paper", "a44");
    assertThat(paper.status()).isEqualTo(2);
    assertThat(paper.err()).contains("\"a44\"", "The nearest are a4");
    Cli.Said measured = svg(job, "--measured-x", "9.95");
    assertThat(measured.status()).isEqualTo(2);
    assertThat(measured.err()).contains("9.95");
    Cli.Said nan = svg(job, "--measured-y", "NaN");
    assertThat(nan.status()).isEqualTo(2);
    assertThat(nan.err()).contains("--measured-y");
    Cli.Said noFolder = Cli.run("draft", job);
    assertThat(noFolder.status()).isEqualTo(2);
    assertThat(noFolder.err()).contains("--out");
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void dateIsOnThePatternsAndAWrongOneIsRefused() throws IOException {
    String job = job(12, 8);
    assertThat(svg(job).status()).isZero();
    assertThat(Files.readString(folder.resolve("out/rest/base.svg"))).contains("2026-03-07");
    Cli.Said wrong = Cli.run("draft", job, "--out", out(), "--date", "7.3.2026");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("7.3.2026", "2026-03-07");
  }

  @Test
  void refusedPaperLeavesNothing() throws IOException {
    String rows =
        Cli.write(
            folder.resolve("mine.json"),
            "{ \"papers\": [ { \"id\": \"stamp\", \"width\": 80, \"height\": 80 } ] }");
    String job = job(12, 8);
    Map<String, String> before = Cli.contents(folder);
    Cli.Said said = Cli.run("draft", job, "--out", out(), "--paper", "stamp", "--catalogue", rows);
    assertThat(said.status()).isEqualTo(2);
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }

  @Test
  void aFolderThatCannotBeMadeIsNamedAsAskedWithReasonAndRemedy() throws IOException {
    String job = job(12, 8);
    Map<String, String> before = Cli.contents(folder);
    // Below a regular file, and where not even an administrator may make a folder.
    String below = folder.resolve("job.json/deep/out").toString();
    Cli.Said file = Cli.run("draft", job, "--svg-only", "--out", below);
    assertThat(file.status()).isEqualTo(3);
    assertThat(file.err())
        .startsWith("Cannot write: " + below + ": " + job + " is a file, not a folder. Choose");
    Path system = Path.of("/proc");
    assumeTrue(Files.isDirectory(system));
    Cli.Said closed = Cli.run("draft", job, "--svg-only", "--out", system + "/patterns");
    assertThat(closed.status()).isEqualTo(3);
    assertThat(closed.err())
        .startsWith("Cannot write: " + system + "/patterns: ")
        .contains(" in " + system + ". Choose another folder")
        .doesNotContain(".padwright-");
    assertThat(Cli.contents(folder)).isEqualTo(before);
  }
}
