package padwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands print and write of a part with a section of its own on one side. */
class RunOutputTest {
  @TempDir private Path folder;

  private String job() throws IOException {
    String job =
        """
        { "format": "padwright-job", "version": 1, "units": "mm", "title": "Reading nook",
          "parts": [ { "id": "nose", "name": "Seat", "build": "wrapped",
            "base": { "outline": { "rectangle": { "length": 420, "width": 380 } },
                      "board": "birch-plywood", "thickness": 12 },
            "foam": [ { "foam": "firm", "thickness": 24, "overhang": 0 } ],
            "cover": { "covering": "knit-backed-vinyl", "thickness": 1, "turnUnder": 20 },
            "runs": [ { "sides": ["front"], "edge": { "round": 6 } } ] } ] }
        """;
    return Cli.write(folder.resolve("job.json"), job);
  }

  /** 57.5708 with a square edge, 54.9956 rounded to 6: the rows of the taut path. */
  @Test
  void figuresGiveTheSideThatDiffers() throws IOException {
    String out = Cli.run("figures", job()).out();
    assertThat(out).containsPattern("Cover, each other side +57\\.6 mm");
    assertThat(out).containsPattern("Cover, front +55\\.0 mm");
  }

  @Test
  void draftDrawsAndWritesBothSections() throws IOException {
    Path out = folder.resolve("out");
    assertThat(Cli.run("draft", job(), "--out", out.toString()).status()).isZero();

    assertThat(Files.readString(out.resolve("nose/section-front.svg")))
        .contains("section across the front edge", "edge rounded to 6 mm");
    assertThat(Files.readString(out.resolve("nose/section.svg"))).doesNotContain("rounded");
    JsonNode part = new ObjectMapper().readTree(out.resolve("pieces.json").toFile());
    JsonNode own = part.get("parts").get(0).get("sectionBySide").get("front");
    assertThat(own.get("startX").asDouble()).isEqualTo(-6);
    assertThat(part.get("parts").get(0).get("section").get("startX").asDouble()).isZero();
  }

  /** The back's rounding passes into the right side at that side's end: drawn once, as the back. */
  @Test
  void aPassageIsWrittenWithBothItsSectionsAndNotDrawnAsASideOfItsOwn() throws IOException {
    String text =
        Files.readString(Path.of(job()))
            .replace("\"sides\": [\"front\"]", "\"sides\": [\"back\"], \"passage\": 20")
            .replaceFirst(
                "\"rectangle\": \\{[^}]*}",
                "\"rectangle\": { \"length\": 400, \"width\": 300, \"radius\": 60 }");
    Path out = folder.resolve("out");
    assertThat(Cli.run("draft", Cli.write(Path.of(job()), text), "--out", out.toString()).status())
        .isZero();

    assertThat(out.resolve("nose/section-back.svg")).exists();
    assertThat(out.resolve("nose/section-right-passage.svg")).doesNotExist();
    JsonNode part =
        new ObjectMapper().readTree(out.resolve("pieces.json").toFile()).get("parts").get(0);
    JsonNode right = part.get("passages").get("right passage");
    assertThat(right.get("length").asDouble()).isEqualTo(20);
    assertThat(right.get("start").get("startX").asDouble()).isZero();
    assertThat(right.get("end").get("startX").asDouble()).isEqualTo(-6);
    assertThat(part.get("sectionBySide").has("back")).isTrue();
    assertThat(part.get("sectionBySide").has("right passage")).isFalse();
  }
}
