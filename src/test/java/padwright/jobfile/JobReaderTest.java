package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import padwright.design.EdgeShape;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Treatment;

class JobReaderTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final JobReader reader = new JobReader(Materials.small());

  private WrappedPad pad(String text) {
    return (WrappedPad) reader.read("job.json", text).parts().get(0);
  }

  @Test
  void everyFieldWrittenIsInTheJobAndWhatIsLeftOutStaysOpen() {
    Job job = reader.read("job.json", JobText.deskRest());
    OutlineShape outline = new OutlineShape.Rectangle(600, 60, List.of(0.0, 0.0, 0.0, 0.0));
    Neighbour free = Neighbour.FREE;
    WrappedPad expected =
        new WrappedPad(
            "desk-rest",
            "Forearm rest",
            WrappedPad.Kind.PAD,
            2,
            0,
            WrappedPad.Side.FRONT,
            new WrappedPad.Base(
                outline,
                WrappedPad.SizeMeaning.BOARD,
                List.of(free, free, free, free),
                NONE,
                "birch-plywood",
                12,
                NONE,
                0,
                List.of()),
            List.of(
                new WrappedPad.FoamLayer("firm", 12, NONE),
                new WrappedPad.FoamLayer("medium", 12, OptionalDouble.of(3))),
            Optional.empty(),
            new EdgeShape.Round(6),
            new WrappedPad.Cover(
                "knit-backed-vinyl",
                OptionalDouble.of(1),
                OptionalDouble.of(20),
                OptionalDouble.of(0),
                0,
                0,
                false),
            new WrappedPad.Corners(List.of(Treatment.AUTO), NONE, NONE),
            new WrappedPad.Staples(
                Optional.empty(),
                OptionalDouble.of(8),
                OptionalDouble.of(25),
                OptionalDouble.of(10),
                NONE),
            WrappedPad.Host.none(),
            new WrappedPad.DustCover(true, NONE, NONE));
    assertThat(job)
        .isEqualTo(
            new Job(
                "Reading nook", Optional.empty(), Optional.empty(), Units.MM, List.of(expected)));
  }

  @Test
  void aJobInInchesAndTheSameInMmAreTheSameParts() {
    String inches =
        """
        {"format":"padwright-job","version":1,"title":"t","units":"in","parts":[{"id":"a","name":"a",
        "build":"wrapped","base":{"outline":{"rectangle":{"length":"1 ft 11 5/8 in","width":2.375,
        "radius":"3/16 in"}},"board":"mdf","thickness":"1/2"},"foam":[{"foam":"firm",
        "thickness":"1 1/4","overhang":"-1/8 in"}],"cover":{"covering":"woven-wool"}}]}
        """;
    // By hand: 23 5/8 in = 600.075, 2.375 in = 60.325, 3/16 in = 4.7625, 1/2 in = 12.7,
    // 1 1/4 in = 31.75, 1/8 in = 3.175 mm.
    String mm =
        """
        {"format":"padwright-job","version":1,"title":"t","units":"mm","parts":[{"id":"a","name":"a",
        "build":"wrapped","base":{"outline":{"rectangle":{"length":600.075,"width":"60.325mm",
        "radius":4.7625}},"board":"mdf","thickness":12.7},"foam":[{"foam":"firm",
        "thickness":31.75,"overhang":-3.175}],"cover":{"covering":"woven-wool"}}]}
        """;
    // Equal to the last digit, which is within the 1e-9 asked for.
    assertThat(pad(inches)).isEqualTo(pad(mm));
  }

  @Test
  void anOpeningKeepsEverySideClearUnlessTheMakerSaysOtherwise() {
    String opening = JobText.with("\"board\":", "\"size\": \"opening\", \"board\":");
    Neighbour clear = Neighbour.KEEP_CLEAR;
    assertThat(pad(opening).base().sides()).containsExactly(clear, clear, clear, clear);
    String back =
        JobText.with(
            "\"board\":",
            "\"size\": \"opening\", \"clearance\": 2, \"sides\": {\"back\": \"butting\"},"
                + " \"board\":");
    assertThat(pad(back).base().sides()).containsExactly(clear, clear, Neighbour.BUTTING, clear);
    assertThat(pad(back).base().clearance()).hasValue(2);
  }

  @Test
  void everyOutlineIsRead() {
    String rectangle = "\"rectangle\": { \"length\": 600, \"width\": 60 }";
    assertThat(
            pad(JobText.with(
                    rectangle, "\"trapezoid\": {\"front\": 440, \"back\": 400, \"depth\": 390}"))
                .base()
                .outline())
        .isEqualTo(new OutlineShape.Trapezoid(440, 400, 390));
    assertThat(pad(JobText.with(rectangle, "\"circle\": {\"diameter\": 320}")).base().outline())
        .isEqualTo(new OutlineShape.Circle(320));
    assertThat(
            pad(JobText.with(rectangle, "\"ellipse\": {\"length\": 420, \"width\": 300}"))
                .base()
                .outline())
        .isEqualTo(new OutlineShape.Ellipse(420, 300));
    assertThat(
            pad(JobText.with("\"width\": 60", "\"width\": 60, \"radii\": [0, 50, 10, 1]"))
                .base()
                .outline())
        .isEqualTo(new OutlineShape.Rectangle(600, 60, List.of(0.0, 50.0, 10.0, 1.0)));
    assertThat(pad(JobText.with("\"width\": 60", "\"width\": 60, \"radius\": 30")).base().outline())
        .isEqualTo(new OutlineShape.Rectangle(600, 60, List.of(30.0, 30.0, 30.0, 30.0)));
  }

  @Test
  void everyEdgeAndEveryWayToFoldACornerIsRead() {
    String edge = "{ \"round\": 6 }";
    assertThat(pad(JobText.with(edge, "\"square\"")).edge()).isEqualTo(new EdgeShape.Square());
    assertThat(pad(JobText.with(edge, "\"full round\"")).edge())
        .isEqualTo(new EdgeShape.FullRound());
    assertThat(pad(JobText.with(edge, "{\"bevel\": 5}")).edge()).isEqualTo(new EdgeShape.Bevel(5));
    assertThat(pad(JobText.with("\"edge\": " + edge + ",", "")).edge())
        .isEqualTo(new EdgeShape.Square());
    String hollow =
        JobText.with(
            "{ \"rectangle\": { \"length\": 600, \"width\": 60 } }",
            "{ \"path\": [[0, 0], [600, 0], [600, 60], [300, 40], [0, 60]] }");
    for (Treatment t : Treatment.values()) {
      String word = Words.TREATMENT.word(t);
      assertThat(pad(hollow.replace("\"auto\"", '"' + word + '"')).corners().treatments())
          .containsExactly(t);
    }
    WrappedPad.Corners each =
        pad(JobText.with(
                "\"auto\"",
                "{\"each\": [\"auto\", \"eased\", \"pleats\", \"mitred end\"], \"reliefStop\": 9,"
                    + " \"pleatDepth\": 4}"))
            .corners();
    assertThat(each)
        .isEqualTo(
            new WrappedPad.Corners(
                List.of(Treatment.AUTO, Treatment.EASED, Treatment.PLEATS, Treatment.MITRED_END),
                OptionalDouble.of(9),
                OptionalDouble.of(4)));
  }

  @Test
  void aJobFileOnDiskIsReadAndMayBeginWithAByteOrderMark(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("job.json");
    Files.writeString(file, "\uFEFF" + JobText.deskRest());
    assertThat(reader.read(file)).isEqualTo(reader.read("x", JobText.deskRest()));
  }
}
