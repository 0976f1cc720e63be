package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padwright.design.Assumption;
import padwright.design.Job;
import padwright.design.OutlineShape;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.FoamLayer;
import padwright.material.CatalogueReader;
import padwright.measure.InputRefused;

class StarterTest {
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final Starter starter = new Starter(CatalogueReader.builtIn());

  private static WrappedPad only(Job job) {
    assertThat(job.parts()).hasSize(1);
    return (WrappedPad) job.parts().get(0);
  }

  private static StartNumbers numbers(
      double length, double width, double board, double foam, double covering) {
    return new StartNumbers(
        OptionalDouble.of(length),
        OptionalDouble.of(width),
        OptionalDouble.of(board),
        OptionalDouble.of(foam),
        OptionalDouble.of(covering));
  }

  @Test
  void theIndexNamesEveryReadyMadePartAndNoOther() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("patterns"))) {
      assertThat(files.map(p -> p.getFileName().toString()).filter(n -> !n.equals("index.json")))
          .containsExactlyInAnyOrderElementsOf(
              starter.parts().stream().map(p -> p.id() + ".json").toList());
    }
    assertThat(starter.parts().stream().map(ReadyPart::id))
        .containsExactly(
            "forearm-rest",
            "round-stool-top",
            "drop-in-seat",
            "wall-panel",
            "armrest",
            "kneeler",
            "splayed-window-seat",
            "corner-bench-pad",
            "curved-back-panel");
  }

  @Test
  void everyReadyMadePartStartsAsItStands() {
    for (ReadyPart part : starter.parts()) {
      WrappedPad pad = only(starter.start(part.id(), StartNumbers.none()));
      OutlineShape outline = pad.base().outline();
      boolean points = outline instanceof OutlineShape.FreePath;
      assertThat(outline instanceof OutlineShape.Circle || points)
          .as(part.id())
          .isEqualTo(part.width().isEmpty());
      assertThat(part.length().isEmpty()).as(part.id()).isEqualTo(points);
      assertThat(pad.staples().leg()).as("the leg is chosen by the rules").isEmpty();
      assertThat(starter.taken(part.id(), StartNumbers.none())).isNotEmpty();
    }
  }

  @Test
  void theFiveNumbersReplaceThoseOfTheReadyMadePart() {
    WrappedPad pad = only(starter.start("kneeler", numbers(500, 300, 15, 75, 0)));
    assertThat(pad.base().outline())
        .isEqualTo(new OutlineShape.Rectangle(500, 300, List.of(0.0, 0.0, 0.0, 0.0)));
    assertThat(pad.base().thickness()).isEqualTo(15);
    assertThat(pad.foam().stream().mapToDouble(FoamLayer::thickness).sum()).isEqualTo(75);
    assertThat(pad.cover().thickness()).hasValue(0);
  }

  @Test
  void aRoundOneTakesItsDiameterAsTheLengthAndNoWidth() {
    StartNumbers round = new StartNumbers(OptionalDouble.of(350), NONE, NONE, NONE, NONE);
    assertThat(only(starter.start("round-stool-top", round)).base().outline())
        .isEqualTo(new OutlineShape.Circle(350));
    assertThatThrownBy(() -> starter.start("round-stool-top", numbers(350, 350, 18, 50, 1)))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("round")
        .hasMessageContaining("diameter");
  }

  @Test
  void foamIsSharedOutInWholeMillimetresAndAddsUp() {
    List<FoamLayer> layers =
        List.of(new FoamLayer("firm", 30, NONE), new FoamLayer("medium", 20, NONE));
    // 45 x 30 / 50 = 27, the rest 18; 33 x 0.6 = 19.8, so 20 and 13.
    assertThat(StartSizes.foam(layers, 45))
        .extracting(FoamLayer::thickness)
        .containsExactly(27.0, 18.0);
    assertThat(StartSizes.foam(layers, 33))
        .extracting(FoamLayer::thickness)
        .containsExactly(20.0, 13.0);
    assertThat(StartSizes.foam(layers.subList(0, 1), 31.75))
        .extracting(FoamLayer::thickness)
        .containsExactly(31.75);
  }

  @Test
  void otherOutlinesKeepTheirProportions() {
    OptionalDouble length = OptionalDouble.of(550);
    OptionalDouble width = OptionalDouble.of(300);
    assertThat(StartSizes.outline(new OutlineShape.Trapezoid(440, 400, 390), length, width))
        .isEqualTo(new OutlineShape.Trapezoid(550, 500, 300));
    assertThat(StartSizes.outline(new OutlineShape.Trapezoid(440, 400, 390), NONE, width))
        .isEqualTo(new OutlineShape.Trapezoid(440, 400, 300));
    assertThat(StartSizes.outline(new OutlineShape.Ellipse(400, 200), length, width))
        .isEqualTo(new OutlineShape.Ellipse(550, 300));
  }

  @Test
  void everyValueTheMakerDidNotGiveIsNamed() {
    List<Assumption> all = starter.taken("wall-panel", StartNumbers.none());
    assertThat(all)
        .extracting(Assumption::field)
        .contains(
            "base.outline.rectangle.length",
            "base.outline.rectangle.width",
            "base.size",
            "base.sides.right",
            "base.board",
            "base.thickness",
            "foam[0].foam",
            "foam[0].thickness",
            "wadding.wadding",
            "edge.bevel",
            "cover.covering",
            "cover.thickness",
            "corners",
            "dustCover");
    assertThat(all).extracting(Assumption::value).contains("600 mm", "mdf", "finished");
    List<Assumption> rest = starter.taken("wall-panel", numbers(500, 300, 9, 25, 1));
    assertThat(rest)
        .extracting(Assumption::field)
        .containsExactlyElementsOf(
            all.stream()
                .map(Assumption::field)
                .filter(f -> !f.startsWith("base.outline.") && !f.endsWith(".thickness"))
                .toList());
  }

  @Test
  void layersThatShareTheFoamAreNamedWithTheReason() {
    StartNumbers foam = new StartNumbers(NONE, NONE, NONE, OptionalDouble.of(40), NONE);
    assertThat(starter.taken("kneeler", foam))
        .filteredOn(a -> a.field().equals("foam[0].thickness"))
        .singleElement()
        .satisfies(
            a -> {
              // 40 x 40 / 60 = 26.67, a whole 27.
              assertThat(a.value()).isEqualTo("27 mm");
              assertThat(a.reason()).contains("your foam thickness");
            });
  }

  @Test
  void numbersThatCannotBeMadeAreRefused() {
    // 20 wide cannot have plan corners of radius 30.
    assertThatThrownBy(() -> starter.start("armrest", numbers(280, 20, 12, 25, 1)))
        .isInstanceOfSatisfying(
            InputRefused.class,
            r -> {
              assertThat(r.path()).isEqualTo("$.parts[0].base.outline.rectangle.radius");
              assertThat(r.line()).isZero();
            });
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1, 1e9}) {
      assertThatThrownBy(() -> numbers(600, bad, 12, 24, 1))
          .isInstanceOf(InputRefused.class)
          .hasMessageContaining("width");
    }
    assertThatThrownBy(() -> starter.start("kneeler", numbers(500, 0, 12, 24, 1)))
        .isInstanceOf(InputRefused.class);
    assertThatThrownBy(() -> starter.start("kneler", StartNumbers.none()))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("The nearest are kneeler");
  }

  @Test
  void aJobStartedInInchesHoldsTheSamePart() {
    StartNumbers numbers = numbers(609.6, 63.5, 12.7, 25.4, 1);
    Job inches = starter.start("forearm-rest", numbers, Units.INCH);
    assertThat(inches.units()).isEqualTo(Units.INCH);
    assertThat(inches.parts()).isEqualTo(starter.start("forearm-rest", numbers).parts());
    assertThat(JobWriter.write(inches)).contains("\"length\": 24, \"width\": \"2 1/2 in\"");
  }
}
