package padwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import padwright.design.EdgeShape;
import padwright.design.Finding;
import padwright.design.Finding.Level;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Fixing;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Treatment;
import padwright.desk.edit.PartEdit;
import padwright.desk.edit.Remedy;
import padwright.desk.edit.Shipped;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;
import padwright.pattern.PatternEngine;

/** Findings provoked one by one: what is offered clears them, and brings no new stop. */
class RemedyFinderTest {
  private static final PatternEngine ENGINE = new PatternEngine(Shipped.CATALOGUE);

  private final EngineRoom room =
      new EngineRoom(Shipped.CATALOGUE, Runnable::run, e -> {}, System::nanoTime);

  private List<FindingRow> rows(PartResult result, Units units) {
    RemedyFinder finder =
        new RemedyFinder(room, new PartEdit(Shipped.READER, units), Shipped.CATALOGUE, units);
    return finder.withRemedies(finder.rows(result), result, () -> false);
  }

  private static Set<String> stops(PartResult result) {
    return result.findings().stream()
        .filter(f -> f.level() == Level.STOP)
        .map(Finding::rule)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static long count(PartResult result, String rule) {
    return result.findings().stream().filter(f -> f.rule().equals(rule)).count();
  }

  private record Provoked(String rule, Consumer<Pads> change) {}

  private static Host screwed(OptionalDouble length) {
    return new Host(
        Fixing.SCREWS,
        OptionalDouble.of(18),
        WrappedPad.Finish.BARE,
        Optional.empty(),
        length,
        List.of());
  }

  private static List<Provoked> provoked() {
    return List.of(
        new Provoked("staple-breakthrough", p -> p.leg = OptionalDouble.of(14)),
        new Provoked(
            "staple-on-arris",
            p -> {
              p.backArris = 6;
              p.edgeDistance = OptionalDouble.of(5);
            }),
        new Provoked(
            "staple-spacing",
            p -> {
              p.outline = Pads.rectangle(400, 300);
              p.spacing = OptionalDouble.of(4);
            }),
        new Provoked("turn-under-meets", p -> p.turnUnder = OptionalDouble.of(45)),
        new Provoked(
            "edge-meets",
            p -> {
              p.outline = Pads.rectangle(600, 60);
              p.edge = new EdgeShape.Round(24);
              p.foam = List.of(Pads.layer(24, -8));
            }),
        new Provoked(
            "corner-treatment",
            p -> {
              p.outline = Pads.rectangle(400, 300, 60);
              p.treatments = List.of(Treatment.SINGLE_PLEAT);
            }),
        new Provoked(
            "wrap-raw-edge",
            p -> {
              p.outline = Pads.rectangle(400, 300);
              p.treatments = List.of(Treatment.SINGLE_PLEAT);
              p.reliefStop = OptionalDouble.of(1);
            }),
        new Provoked(
            "foam-sheet", p -> p.foam = List.of(new FoamLayer("firm", 27, OptionalDouble.of(0)))),
        new Provoked(
            "run-section-smooth",
            p -> {
              p.outline = Pads.rectangle(400, 300, 60);
              p.runs =
                  List.of(
                      Pads.run(
                          Optional.of(new EdgeShape.Round(12)), OptionalDouble.empty(), "front"));
            }),
        new Provoked("mount-screw-through", p -> p.host = screwed(OptionalDouble.of(60))),
        new Provoked(
            "cover-roll-width",
            p -> {
              p.outline = Pads.rectangle(900, 1600);
              p.kind = WrappedPad.Kind.PANEL;
            }));
  }

  private static PartResult result(Provoked p) {
    Pads pads = new Pads();
    p.change().accept(pads);
    return ENGINE.run(pads.pad());
  }

  @TestFactory
  Stream<DynamicTest> eachHasARemedyThatClearsIt() {
    return provoked().stream()
        .map(p -> DynamicTest.dynamicTest(p.rule(), () -> hasARemedy(p, Units.MM)));
  }

  @Test
  void aJobInInchesIsOfferedThemToo() {
    provoked().forEach(p -> hasARemedy(p, Units.INCH));
  }

  private void hasARemedy(Provoked p, Units units) {
    PartResult before = result(p);
    assertThat(before.findings()).extracting(Finding::rule).contains(p.rule());
    FindingRow row =
        rows(before, units).stream()
            .filter(r -> r.finding().rule().equals(p.rule()))
            .findFirst()
            .orElseThrow();
    Remedy remedy = row.remedy().orElseThrow(() -> new AssertionError(row.sentence()));
    assertThat(remedy.label()).isNotBlank();
    WrappedPad changed = new PartEdit(Shipped.READER, units).with(before.asked(), remedy.steps());
    PartResult after = ENGINE.run(changed);
    assertThat(count(after, p.rule())).as(remedy.label()).isLessThan(count(before, p.rule()));
    assertThat(stops(before)).as(remedy.label()).containsAll(stops(after));
  }

  @Test
  void foamNoSheetMakesIsOfferedOutOfTwoSheetsThatDo() {
    Pads pads = new Pads();
    double[] two = twoSheets();
    pads.foam = List.of(new FoamLayer("firm", two[0] + two[1], OptionalDouble.of(0)));
    PartResult before = ENGINE.run(pads.pad());
    FindingRow row =
        rows(before, Units.MM).stream()
            .filter(r -> r.finding().rule().equals("foam-sheet"))
            .findFirst()
            .orElseThrow();
    Remedy remedy = row.remedy().orElseThrow();
    assertThat(remedy.label()).contains("two sheets");
    WrappedPad after = new PartEdit(Shipped.READER, Units.MM).with(pads.pad(), remedy.steps());
    assertThat(after.foam()).hasSize(2);
    assertThat(after.foam().stream().mapToDouble(FoamLayer::thickness).sum())
        .isEqualTo(two[0] + two[1]);
    assertThat(after.foam()).allMatch(l -> l.overhang().equals(OptionalDouble.of(0)));
  }

  /** Two sheets of the catalogue's that together are no sheet. */
  private static double[] twoSheets() {
    List<Double> sheets = Shipped.CATALOGUE.foam("firm").orElseThrow().sheets();
    for (double a : sheets) {
      for (double b : sheets) {
        if (sheets.stream().noneMatch(s -> Math.abs(s - a - b) < 1)) {
          return new double[] {a, b};
        }
      }
    }
    throw new AssertionError("every pair of sheets is a sheet");
  }

  /** Whatever is offered for any of a wild lot of parts, none brings a stop that was not there. */
  @Test
  void noRemedyBringsANewStop() {
    int offered = 0;
    for (Provoked one : provoked()) {
      for (Provoked other : provoked()) {
        Pads pads = new Pads();
        one.change().accept(pads);
        other.change().accept(pads);
        PartResult before;
        try {
          before = ENGINE.run(pads.pad());
        } catch (padwright.measure.InputRefused r) {
          continue;
        }
        for (FindingRow row : rows(before, Units.MM)) {
          if (row.remedy().isPresent()) {
            offered++;
            WrappedPad changed =
                new PartEdit(Shipped.READER, Units.MM)
                    .with(before.asked(), row.remedy().get().steps());
            assertThat(stops(before)).containsAll(stops(ENGINE.run(changed)));
          }
        }
      }
    }
    assertThat(offered).isGreaterThan(50);
  }

  @Test
  void theSearchEndsWhenItIsTold() {
    PartResult before = result(provoked().get(0));
    RemedyFinder finder =
        new RemedyFinder(room, new PartEdit(Shipped.READER, Units.MM), Shipped.CATALOGUE, Units.MM);
    assertThat(finder.withRemedies(finder.rows(before), before, () -> true))
        .allMatch(r -> r.remedy().isEmpty());
  }
}
