package padwright.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import padwright.json.Node;

/** The rows that come with the program, held against figures from outside. */
class BuiltInCatalogueTest {
  private static final double INCH = 25.4;
  private final Catalogue catalogue = CatalogueReader.builtIn();

  /** Every object that has an id, and every thickness of a board, states its origin itself. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "boards",
        "foams",
        "waddings",
        "coverings",
        "staples",
        "screws",
        "papers",
        "constants"
      })
  void everyRowOfEveryFileSaysWhereItComesFrom(String file) {
    List<Node> rows = new ArrayList<>();
    for (Node row : CatalogueReader.builtInFile(file).require(file).array(3, 1000)) {
      rows.add(row);
      row.get("thicknesses").ifPresent(t -> rows.addAll(t.array()));
    }
    for (Node row : rows) {
      assertThat(row.require("source").string()).as(row.path()).hasSizeGreaterThan(9);
      assertThat(row.require("status").string())
          .as(row.path())
          .isIn("published", "practice", "memory", "own", "measured");
    }
  }

  /** Birch plywood maker's data sheet: nominal and lower limit, mm. */
  @ParameterizedTest
  @CsvSource({"4, 3.5", "6.5, 6.1", "12, 11.5", "18, 17.1"})
  void birchPlywoodHasItsPublishedLowerLimits(double nominal, double lower) {
    Board board = catalogue.board("birch-plywood").orElseThrow();
    assertThat(board.lowerLimit(nominal)).isEqualTo(lower);
    assertThat(board.listed(nominal).orElseThrow().origin().status()).isEqualTo(Status.PUBLISHED);
  }

  /**
   * Sanded plywood rule -(0.4 + 0.03 t), from memory: worked by hand, to show that a row without
   * limits takes the board's rule; not a check of the rule.
   */
  @ParameterizedTest
  @CsvSource({"9, 8.33, 9.47", "15, 14.15, 15.65", "24, 22.88, 24.92"})
  void birchPlywoodWithoutListedLimitsTakesTheRule(double nominal, double lower, double upper) {
    Board.Thickness thickness =
        catalogue.board("birch-plywood").orElseThrow().listed(nominal).orElseThrow();
    assertThat(thickness.lower()).isCloseTo(lower, within(1e-12));
    assertThat(thickness.upper()).isCloseTo(upper, within(1e-12));
    assertThat(thickness.origin().status()).isEqualTo(Status.MEMORY);
  }

  /** Maker's data sheet: birch plywood weighs 660 to 710 kg/m3. */
  @Test
  void birchPlywoodWeighsWhatItsDataSheetSays() {
    assertThat(catalogue.board("birch-plywood").orElseThrow().density()).isBetween(660.0, 710.0);
  }

  /** PS 1-19 as summarised by its trade association: 1/4 in -> 0.219 to 0.281 in. */
  @Test
  void usPlywoodQuarterInchHasItsPublishedLimits() {
    Board.Thickness quarter =
        catalogue.board("us-plywood").orElseThrow().listed(0.25 * INCH).orElseThrow();
    assertThat(quarter.lower() / INCH).isCloseTo(0.219, within(0.0005));
    assertThat(quarter.upper() / INCH).isCloseTo(0.281, within(0.0005));
  }

  /** PS 1-19, the same: 5 % either way above 13/16 in, 1/32 in up to it. */
  @Test
  void usPlywoodIsWithinFivePercentAboveThirteenSixteenths() {
    for (Board.Thickness t : catalogue.board("us-plywood").orElseThrow().thicknesses()) {
      double off = t.nominal() > 13.0 / 16 * INCH ? 0.05 * t.nominal() : INCH / 32;
      assertThat(t.nominal() - t.lower()).isCloseTo(off, within(1e-9));
      assertThat(t.upper() - t.nominal()).isCloseTo(off, within(1e-9));
    }
  }

  /** Makers' sheets: MDF 0.2, particleboard 0.3 mm either way, measured as EN 324-1. */
  @ParameterizedTest
  @CsvSource({"mdf, 0.2", "particleboard, 0.3"})
  void pressedBoardsHaveOneToleranceForEveryThickness(String id, double off) {
    Board board = catalogue.board(id).orElseThrow();
    assertThat(board.pressedFibre()).isTrue();
    for (Board.Thickness t : board.thicknesses()) {
      assertThat(t.lower()).isCloseTo(t.nominal() - off, within(1e-9));
      assertThat(board.lowerLimit(t.nominal() + 1)).isCloseTo(t.nominal() + 1 - off, within(1e-9));
    }
  }

  /** Wood Handbook FPL-GTR-282 (2021) Table 5-3a, at 12 % moisture. */
  @ParameterizedTest
  @CsvSource({
    "white-pine, 0.35",
    "poplar, 0.42",
    "southern-pine, 0.51",
    "birch, 0.62",
    "red-oak, 0.63",
    "beech, 0.64",
    "oak, 0.68"
  })
  void solidBoardsHaveTheHandbooksSpecificGravity(String id, double gravity) {
    assertThat(catalogue.board(id).orElseThrow().specificGravity()).isEqualTo(gravity);
  }

  /**
   * Specific gravity is ovendry mass on volume at 12 %; the board as it lies weighs 12 % more.
   * Holds the two figures of each row to each other; half a hundredth of gravity is 5.6 kg/m3.
   */
  @Test
  void densityAndSpecificGravityOfEveryBoardAgree() {
    for (Board board : catalogue.boards()) {
      assertThat(board.density())
          .as(board.id())
          .isCloseTo(1120 * board.specificGravity(), within(6.0));
    }
  }

  /** EN 1995-1-1 8.4, by a summary: d = sqrt(a b); 0.9 x 0.7 -> 0.794 mm. */
  @Test
  void theFirstStapleIsTheFineWireOfEquivalentDiameterNoughtPointSevenNineFour() {
    Staple first = catalogue.staples().get(0);
    assertThat(first.equivalentDiameter()).isCloseTo(0.794, within(0.0005));
    assertThat(first.legs()).contains(8.0, 12.0);
  }

  /**
   * Wood Handbook FPL-GTR-282 (2021) Table 8-9: shank; trade page: edge distance in MDF, inches.
   */
  @ParameterizedTest
  @CsvSource({"no-6, 3.51, 0.5", "no-8, 4.17, 0.625", "no-10, 4.83, 1"})
  void screwsHaveTheHandbooksShanks(String id, double shank, double edge) {
    Screw screw = catalogue.screw(id).orElseThrow();
    assertThat(screw.shank()).isEqualTo(shank);
    assertThat(screw.edgeDistance()).isEqualTo(edge * INCH);
  }

  /** ISO 216: A0 has 1 m2 and sides 1 : sqrt 2; halving the long side gives the next, whole mm. */
  @Test
  void isoPapersFollowFromTheirRule() {
    double width = 1000 / Math.pow(2, 0.25);
    double height = 1000 * Math.pow(2, 0.25);
    int w = (int) Math.round(width);
    int h = (int) Math.round(height);
    for (int n = 0; n <= 4; n++) {
      Paper paper = catalogue.paper("A" + n).orElseThrow();
      assertThat(paper.width()).isEqualTo(w);
      assertThat(paper.height()).isEqualTo(h);
      int half = h / 2;
      h = w;
      w = half;
    }
  }

  /** ANSI/ASME Y14.1: A is 8.5 x 11 in; each next size doubles the short side. */
  @Test
  void ansiPapersFollowFromLetter() {
    double w = 8.5;
    double h = 11;
    for (String id : List.of("letter", "tabloid", "ansi-c", "ansi-d", "ansi-e")) {
      Paper paper = catalogue.paper(id).orElseThrow();
      assertThat(paper.width()).isCloseTo(w * INCH, within(1e-9));
      assertThat(paper.height()).isCloseTo(h * INCH, within(1e-9));
      double next = 2 * w;
      w = h;
      h = next;
    }
  }

  @ParameterizedTest
  @CsvSource({"roll-610, 610", "roll-914, 914", "roll-1067, 1067"})
  void rollsAreAsLongAsTheDrawing(String id, double width) {
    Paper roll = catalogue.paper(id).orElseThrow();
    assertThat(roll.isRoll()).isTrue();
    assertThat(roll.width()).isCloseTo(width, within(0.5));
  }

  /** GB/T 10802-2006 classes run from 22 to 245 N at 25 %; at 40 % a foam reads more. */
  @Test
  void foamsGetHarderFromSoftToExtraFirmWithinTheRangeOfTheTrade() {
    double before = 22;
    for (String id : List.of("soft", "medium", "firm", "extra-firm")) {
      double hardness = catalogue.foam(id).orElseThrow().hardness();
      assertThat(hardness).as(id).isGreaterThan(before).isLessThan(2 * 245);
      before = hardness;
    }
  }

  @Test
  void everyKindIsFoundByItsIdAndMissedByAnother() {
    for (Catalogue.Kind kind : Catalogue.Kind.values()) {
      assertThat(catalogue.ids(kind)).doesNotHaveDuplicates().hasSizeGreaterThan(2);
    }
    assertThat(catalogue.covering("knit-backed-vinyl")).isPresent();
    assertThat(catalogue.wadding("polyester-200")).isPresent();
    assertThat(catalogue.foam("Firm")).isEmpty();
    assertThat(catalogue.paper("A4")).isEqualTo(catalogue.paper("a4")).isPresent();
    assertThat(catalogue.board("birch-plywod")).isEmpty();
    assertThat(catalogue.nearest(Catalogue.Kind.BOARD, "birch-plywod"))
        .hasSize(3)
        .startsWith("birch-plywood");
  }
}
