package padwright.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import padwright.measure.InputRefused;

class JobRefusalTest {
  private final JobReader reader = new JobReader(Materials.small());

  // Each row: the piece of desk-rest.json replaced (see there for the lines), what stands there
  // instead, the line and path to be named, and words of the problem and of the remedy.
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
      "padwright-job"|"other"|1|$.format|"other" is not a job file|padwright-job
      "padwright-job"|7|1|$.format|7 is not text|quotes
      "version": 1|"version": 2|2|$.version|version 2|reads version 1
      "version": 1|"version": "1"|2|$.version|"1" is not a number|without quotes
      "version": 1,||1|$|"version" is missing|Add "version"
      "title": "Reading nook"|"title": " "|3|$.title|empty|name
      "title": "Reading nook"|"title": "a\\nb"|3|$.title|line break|one line
      "title": "Reading nook"|"title": null|3|$.title|null|Write text in quotes
      "title": "Reading nook"|"title": "t", "date": "2026-02-30"|3|$.date|"2026-02-30" is not a date|2026-03-07
      "title": "Reading nook"|"title": "t", "date": "7 March"|3|$.date|"7 March" is not a date|2026-03-07
      "title": "Reading nook"|"title": "t", "titel": "u"|3|$.titel|"titel" is not known|title
      "units": "mm"|"units": "cm"|4|$.units|"cm" is not known|mm
      "units": "mm",||1|$|"units" is missing|Add "units"
      "desk-rest"|"desk rest"|6|$.parts[0].id|"desk rest" cannot be an id|letters
      "desk-rest"|"../x"|6|$.parts[0].id|cannot be an id|letters
      "desk-rest"|""|6|$.parts[0].id|cannot be an id|letters
      "quantity": 2|"quantity": 0|8|$.parts[0].quantity|0 is too small|from 1 to 10000
      "quantity": 2|"quantity": 1.5|8|$.parts[0].quantity|1.5 is not a whole number|whole
      "quantity": 2|"quantity": 1e9|8|$.parts[0].quantity|1e9 is too large|10000
      "quantity": 2|"quantity": 2, "quantity": 3|8|$.parts[0].quantity|twice, first in line 8|Delete
      "quantity": 2|"quantity": 2, "mirrored": -1|8|$.parts[0].mirrored|-1 is too small|from 0
      "quantity": 2|"quantity": 2, "kind": "stool"|8|$.parts[0].kind|"stool" is not known|stool top
      "quantity": 2|"quantity": 2, "front": "up"|8|$.parts[0].front|"up" is not known|front
      "build": "wrapped"|"build": "boxed"|9|$.parts[0].build|"boxed" is a build this program does not cover|wrapped
      { "length": 600, "width": 60 }|{ "length": -600, "width": 60 }|11|$.parts[0].base.outline.rectangle.length|-600 is negative|from 1 mm to 10000 mm
      { "length": 600, "width": 60 }|{ "length": 600, "width": 0 }|11|$.parts[0].base.outline.rectangle.width|0 is zero|from 1 mm
      { "length": 600, "width": 60 }|{ "length": 1e9, "width": 60 }|11|$.parts[0].base.outline.rectangle.length|largest length|unit
      { "length": 600, "width": 60 }|{ "length": "60 mn", "width": 60 }|11|$.parts[0].base.outline.rectangle.length|unknown unit "mn"|mm
      { "length": 600, "width": 60 }|{ "length": true, "width": 60 }|11|$.parts[0].base.outline.rectangle.length|true is not|length
      { "length": 600, "width": 60 }|{ "length": 600 }|11|$.parts[0].base.outline.rectangle|"width" is missing|Add "width"
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radius": 31 }|11|$.parts[0].base.outline.rectangle.radius|31 is too large a radius|30 mm
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radius": 1e-9 }|11|$.parts[0].base.outline.rectangle.radius|too small a radius|0 for a sharp corner
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radii": [0, 40, 30, 0] }|11|$.parts[0].base.outline.rectangle.radii|70 mm on a side of 60 mm|fit
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radii": [1, 2, 3] }|11|$.parts[0].base.outline.rectangle.radii|3 items|exactly 4
      { "length": 600, "width": 60 }|{ "length": 600, "width": 60, "radius": 1, "radii": [1, 2, 3, 4] }|11|$.parts[0].base.outline.rectangle.radii|both given|out
      { "rectangle": { "length": 600, "width": 60 } }|{ }|11|$.parts[0].base.outline|0 fields|exactly one
      { "rectangle": { "length": 600, "width": 60 } }|{ "circle": {"diameter": 9}, "ellipse": {} }|11|$.parts[0].base.outline|2 fields|exactly one
      { "rectangle": { "length": 600, "width": 60 } }|{ "circel": {"diameter": 9} }|11|$.parts[0].base.outline.circel|"circel" is not known|circle
      { "rectangle": { "length": 600, "width": 60 } }|[ ]|11|$.parts[0].base.outline|a list in [ ] is not an object|{ }
      "birch-plywood"|"birch"|12|$.parts[0].base.board|"birch" is not known|birch-plywood
      "birch-plywood",|"mdf", "size": "board", "clearance": 2,|12|$.parts[0].base.clearance|no side is kept clear|keep-clear
      "birch-plywood",|"mdf", "sides": { "left": "clear" },|12|$.parts[0].base.sides.left|"clear" is not known|keep-clear
      "birch-plywood",|"mdf", "sides": { "top": "free" },|12|$.parts[0].base.sides.top|"top" is not known|front
      "birch-plywood",|"mdf", "measured": 14.5,|12|$.parts[0].base.measured|14.5 is too far from the nominal thickness of 12 mm|Measure again
      "birch-plywood",|"mdf", "backArris": 13,|12|$.parts[0].base.backArris|13 is too large|12 mm
      "birch-plywood",|"mdf", "holes": [{ "x": 0, "y": 29, "diameter": 4 }, { "x": 0, "y": 31, "diameter": 4 }],|12|$.parts[0].base.holes[1]|outside the outline|middle
      "birch-plywood",|"mdf", "holes": [{ "x": 0, "y": 0 }],|12|$.parts[0].base.holes[0]|"diameter" is missing|Add
      "thickness": 12.0|"thickness": 0.4|13|$.parts[0].base.thickness|0.4 is too small|from 1 mm to 100 mm
      { "foam": "firm", "thickness": 12 },|{ "foam": "frim", "thickness": 12 },|16|$.parts[0].foam[0].foam|"frim" is not known|firm
      { "foam": "firm", "thickness": 12 },|{ "foam": "firm" },|16|$.parts[0].foam[0]|"thickness" is missing|Add
      { "foam": "firm", "thickness": 12 },|{ "foam": "firm", "thicknes": 12 },|16|$.parts[0].foam[0].thicknes|"thicknes" is not known|thickness
      { "foam": "firm", "thickness": 12 },|5,|16|$.parts[0].foam[0]|5 is not an object|{ }
      "overhang": 3|"overhang": -40|17|$.parts[0].foam[1].overhang|-40 is too small|-29.5 mm
      "overhang": 3|"overhang": "wide"|17|$.parts[0].foam[1].overhang|"wide" is not a length|12 mm
      { "round": 6 }|{ "round": 25 }|19|$.parts[0].edge.round|25 is more than the foam's 24 mm|thicker foam
      { "round": 6 }|{ "bevel": 0 }|19|$.parts[0].edge.bevel|0 is zero|from 0.1 mm
      { "round": 6 }|{ "round": 6, "bevel": 6 }|19|$.parts[0].edge|2 fields|exactly one
      { "round": 6 }|"rounded"|19|$.parts[0].edge|"rounded" is not known|full round
      { "round": 6 }|6|19|$.parts[0].edge|6 is not an edge|square
      "knit-backed-vinyl"|"vinyl"|20|$.parts[0].cover.covering|"vinyl" is not known|knit-backed-vinyl
      "thickness": 1.0|"thickness": -0.1|20|$.parts[0].cover.thickness|-0.1 is negative|from 0 mm
      "turnUnder": 20|"turnUnder": 0|20|$.parts[0].cover.turnUnder|0 is zero|from 1 mm
      "turnUnder": 20|"hem": 20|20|$.parts[0].cover.hem|"hem" is not known|nearest
      "along": 0|"along": 0.5|21|$.parts[0].cover.stretchAllowance.along|0.5 is too large|from 0 to 0.3
      "along": 0|"along": "3 %"|21|$.parts[0].cover.stretchAllowance.along|"3 %" is not a number|without quotes
      "grip": 0|"grip": 0, "warp": "across"|21|$.parts[0].cover.warp|"across" is not known|width
      "auto"|"folded"|22|$.parts[0].corners|"folded" is not known|eased
      "auto"|"gusset"|22|$.parts[0].corners|"gusset" is for a hollow corner|auto
      "auto"|{ "each": ["auto", "auto", "clips", "auto"] }|22|$.parts[0].corners.each[2]|"clips" is for a hollow corner|path
      "auto"|5|22|$.parts[0].corners|5 is not a way|single pleat
      "auto"|{ "each": ["auto"] }|22|$.parts[0].corners.each|1 item|exactly 4
      "auto"|{ "treatment": "auto", "each": [] }|22|$.parts[0].corners.each|both given|out
      "auto"|{ "pleatDepth": 0.001 }|22|$.parts[0].corners.pleatDepth|0.001 is too small|0.5 mm
      "leg": 8|"leg": 0|23|$.parts[0].staples.leg|0 is zero|from 1 mm
      "leg": 8|"staple": "thick"|23|$.parts[0].staples.staple|"thick" is not known|fine
      "leg": 8|"pull": "1 N"|23|$.parts[0].staples.pull|"1 N" is not a number|without quotes
      "spacing": 25|"spacing": 0.0001|23|$.parts[0].staples.spacing|0.0001 is too small|3 mm
      "edgeDistance": 10|"edgeDistance": 31|23|$.parts[0].staples.edgeDistance|31 is too large|30 mm
      "corners": "auto",|"host": { "finish": "bare" },|22|$.parts[0].host|"fixing" is missing|Add
      "corners": "auto",|"host": { "fixing": "glue" },|22|$.parts[0].host.fixing|"glue" is not known|tape
      "corners": "auto",|"host": { "fixing": "tape", "screw": "no-8" },|22|$.parts[0].host.screw|the fixing is "tape"|screws
      "corners": "auto",|"host": { "fixing": "screws", "screw": "no-9" },|22|$.parts[0].host.screw|"no-9" is not known|no-8
      "corners": "auto",|"host": { "fixing": "screws", "positions": [{ "x": 301, "y": 0, "diameter": 3 }] },|22|$.parts[0].host.positions[0].x|301 is too large|300 mm
      "corners": "auto",|"dustCover": 5,|22|$.parts[0].dustCover|5 is not a dust cover|true, false
      "corners": "auto",|"dustCover": { "inset": -1 },|22|$.parts[0].dustCover.inset|-1 is negative|from 0 mm
      "corners": "auto",|"wadding": { "wadding": "polyester-15" },|22|$.parts[0].wadding.wadding|"polyester-15" is not known|polyester-150
      "corners": "auto",|"wadding": { "wadding": "polyester-150", "over": "sides" },|22|$.parts[0].wadding.over|"sides" is not known|top and sides
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": 5 }|11|$.parts[0].base.outline.path|5 is not a list|[ ]
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0]] }|11|$.parts[0].base.outline.path|1 item|2 to 2000
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0]] }|11|$.parts[0].base.outline.path|enclose nothing|third point
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], 5, [90, 90]] }|11|$.parts[0].base.outline.path[1]|5 is not a point|[x, y, bulge]
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90], [90, 90]] }|11|$.parts[0].base.outline.path[1]|1 item|2 to 3
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, "x"], [90, 90]] }|11|$.parts[0].base.outline.path[1][1]|"x" is not a length|12 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 1e5], [90, 90]] }|11|$.parts[0].base.outline.path[1][1]|largest length|unit
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, 101], [90, 90]] }|11|$.parts[0].base.outline.path[1][2]|101 is too large|-100 to 100
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, 1e-7], [90, 90]] }|11|$.parts[0].base.outline.path[1][2]|too small a bulge|tan
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, "1"], [90, 90]] }|11|$.parts[0].base.outline.path[1][2]|"1" is not a number|without quotes
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [90, 0.001], [90, 90]] }|11|$.parts[0].base.outline.path[2]|point 3 lies on point 2|0.1 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [90, 0.05], [90, 90]] }|11|$.parts[0].base.outline.path[2]|point 3 lies on point 2, all but 0.05 mm|0.1 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0, 0.5], [90, 0.001], [90, 90]] }|11|$.parts[0].base.outline.path[2]|point 3 lies on point 2|0.01 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [90, 90], [0, 0.06]] }|11|$.parts[0].base.outline.path[3]|the first one again, all but 0.06 mm|closes by itself
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [90, 90], [0, 0]] }|11|$.parts[0].base.outline.path[3]|the first one again|closes by itself
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [45, 0]] }|11|$.parts[0].base.outline.path|90 mm x 0 mm|unit
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [9000, 0], [9000, 9000], [-9000, 9000]] }|11|$.parts[0].base.outline.path|18000 mm x 9000 mm|10000 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [0.5, 0], [0.5, 90]] }|11|$.parts[0].base.outline.path|0.5 mm x 90 mm|1 mm
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 90], [45, 45.005]] }|11|$.parts[0].base.outline.path|encloses no area|in order
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 90], [90, 0], [0, 90]] }|11|$.parts[0].base.outline.path[0]|side 1 and side 3 cross or touch at [45, 45]|goes round once
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 90], [90, 0], [90, 90], [0, 0]] }|11|$.parts[0].base.outline.path[0]|side 1 and side 3 cross or touch at [45, 45]|goes round once
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [[0, 0], [90, 0], [90, 90], [45, 0], [0, 90]] }|11|$.parts[0].base.outline.path[0]|side 1 and side 3 cross or touch at [45, 0]|goes round once
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0], "cubic": [[150, 100], [-60, 100]] }, [90, 0], [45, -60]] }|11|$.parts[0].base.outline.path[0]|side 1 crosses or touches itself at [45, |goes round once
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0] }, [90, 0], [45, -60]] }|11|$.parts[0].base.outline.path[0]|"cubic" is missing|Add
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0], "cubic": [[1, 2]] }, [90, 0], [45, -60]] }|11|$.parts[0].base.outline.path[0].cubic|1 item|exactly 2
      { "rectangle": { "length": 600, "width": 60 } }|{ "path": [{ "at": [0, 0], "bulge": 1 }, [90, 0], [45, -60]] }|11|$.parts[0].base.outline.path[0].bulge|"bulge" is not known|cubic
      "corners": "auto",|"runs": [{ "sides": ["side 1"], "open": "bare" }],|22|$.parts[0].runs[0].sides[0]|"side 1" is not known|nearest
      "corners": "auto",|"runs": [{ "sides": [], "open": "bare" }],|22|$.parts[0].runs[0].sides|0 items|1 to 4
      "corners": "auto",|"runs": [{ "sides": ["left"] }],|22|$.parts[0].runs[0]|differs in nothing|turnUnder
      "corners": "auto",|"runs": [{ "sides": ["left", "left"], "open": "bare" }],|22|$.parts[0].runs[0].sides[1]|"left" is in a run already|once
      "corners": "auto",|"runs": [{ "sides": ["left"], "open": "bare" }, { "sides": ["left"], "edge": "square" }],|22|$.parts[0].runs[1].sides[0]|"left" is in a run already, in line 22|once
      "corners": "auto",|"runs": [{ "sides": ["left"], "open": "bare", "turnUnder": 20 }],|22|$.parts[0].runs[0].turnUnder|an open run has no turn-under|Leave out
      "corners": "auto",|"runs": [{ "sides": ["left"], "turnUnder": 20, "passage": 60 }],|22|$.parts[0].runs[0].passage|neither of its own|Give "edge"
      "corners": "auto",|"runs": [{ "sides": ["left"], "open": "free" }],|22|$.parts[0].runs[0].open|"free" is not known|bare
      "corners": "auto",|"runs": [{ "sides": ["left"], "edge": { "round": 25 } }],|22|$.parts[0].runs[0].edge.round|more than the foam|thicker
      "corners": "auto",|"runs": [{ "sides": ["left"], "overhang": -30 }],|22|$.parts[0].runs[0].overhang|-30 is too small|-29.5 mm
      "corners": "auto",|"runs": [{ "side": ["left"], "open": "bare" }],|22|$.parts[0].runs[0].side|"side" is not known|sides
      "corners": "auto",|"fittings": { "holes": [] },|22|$.parts[0].fittings.holes|"holes" is not known|nearest
      "corners": "auto",|"fittings": { "vents": [{ "x": 0, "y": 29, "diameter": 4 }] },|22|$.parts[0].fittings.vents[0]|does not lie inside the outline|middle
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 50 } }, "x": 290, "y": 0 }] },|22|$.parts[0].fittings.cutOuts[0]|does not lie inside the outline|middle
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 60 } }, "x": 0, "y": 0 }] },|22|$.parts[0].fittings.cutOuts[0]|does not lie inside the outline|middle
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 900 } }, "x": 0, "y": 0 }] },|22|$.parts[0].fittings.cutOuts[0]|does not lie inside the outline|middle
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0, "y": 0 }, { "outline": { "circle": { "diameter": 10 } }, "x": 0, "y": 0 }] },|22|$.parts[0].fittings.cutOuts[1]|cut-out 1 and cut-out 2 overlap|one outline
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0, "y": 0 }, { "outline": { "circle": { "diameter": 40 } }, "x": 39, "y": 0 }] },|22|$.parts[0].fittings.cutOuts[1]|cut-out 1 and cut-out 2 overlap|one outline
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0, "y": 0, "covering": "cut" }] },|22|$.parts[0].fittings.cutOuts[0].covering|"cut" is not known|turned
      "corners": "auto",|"fittings": { "cutOuts": [{ "outline": { "circle": { "diameter": 40 } }, "x": 0 }] },|22|$.parts[0].fittings.cutOuts[0]|"y" is missing|Add
      "corners": "auto",|"fittings": { "tNuts": [{ "x": 0, "y": 0, "barrel": 8, "flange": 8 }] },|22|$.parts[0].fittings.tNuts[0].flange|8 is not wider than the barrel|flange
      "corners": "auto",|"fittings": { "tNuts": [{ "x": 0, "y": 22, "barrel": 8, "flange": 18 }] },|22|$.parts[0].fittings.tNuts[0]|does not lie inside the outline|middle
      "corners": "auto",|"fittings": { "zones": [{ "kind": "glue", "x": 0, "y": 0, "length": 9, "width": 9 }] },|22|$.parts[0].fittings.zones[0].kind|"glue" is not known|tape
      "corners": "auto",|"fittings": { "zones": [{ "kind": "tape", "x": 299, "y": 0, "length": 9, "width": 9 }] },|22|$.parts[0].fittings.zones[0]|does not lie inside the outline|middle
      """)
  void wrongInputIsRefusedWithItsPlaceValueAndRemedy(
      String before, String after, int line, String path, String problem, String remedy) {
    String text = JobText.with(before, after == null ? "" : after);
    assertThatThrownBy(() -> reader.read("nook.json", text))
        .isInstanceOfSatisfying(
            InputRefused.class,
            r -> {
              assertThat(r.file()).isEqualTo("nook.json");
              assertThat(r.path()).isEqualTo(path);
              assertThat(r.line()).isEqualTo(line);
              assertThat(r.problem()).contains(problem);
              assertThat(r.remedy()).contains(remedy);
            });
  }

  @Test
  void twoPartsWithOneIdAreRefusedEvenWhenOnlyCapitalsDiffer() {
    String part = JobText.deskRest();
    String one = part.substring(part.indexOf("{ \"id\""), part.lastIndexOf("]")).stripTrailing();
    String two = part.replace(one, one + ",\n" + one.replace("desk-rest", "Desk-Rest"));
    assertThatThrownBy(() -> reader.read("nook.json", two))
        .isInstanceOfSatisfying(
            InputRefused.class,
            r -> {
              assertThat(r.path()).isEqualTo("$.parts[1].id");
              assertThat(r.line()).isEqualTo(25);
              assertThat(r.problem()).contains("another part too, in line 6");
            });
  }

  @ParameterizedTest
  @CsvSource({"single pleat", "double pleat", "mitred end"})
  void aRoundOutlineTakesNoFoldThatNeedsACorner(String treatment) {
    String round =
        JobText.with(
                "\"rectangle\": { \"length\": 600, \"width\": 60 }",
                "\"circle\": {\"diameter\": 90}")
            .replace("\"auto\"", '"' + treatment + '"');
    assertThatThrownBy(() -> reader.read("nook.json", round))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("needs a corner")
        .hasMessageContaining("eased");
  }

  @Test
  void aRoundOutlineHasNoRuns() {
    String round =
        JobText.with(
                "\"rectangle\": { \"length\": 600, \"width\": 60 }",
                "\"circle\": {\"diameter\": 90}")
            .replace(
                "\"corners\":",
                "\"runs\": [{ \"sides\": [\"left\"], \"open\": \"bare\" }], \"corners\":");
    assertThatThrownBy(() -> reader.read("nook.json", round))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("a round outline has one edge all round");
  }

  @Test
  void aFreeOutlineHasOneCornerAPointAndTheSidesBetween() {
    String five =
        JobText.with(
            "{ \"rectangle\": { \"length\": 600, \"width\": 60 } }",
            "{ \"path\": [[0, 0], [90, 0], [99, 50], [45, 90], [-9, 50]] }");
    assertThatThrownBy(
            () ->
                reader.read(
                    "x",
                    five.replace(
                        "\"auto\"", "{ \"each\": [" + "\"auto\",".repeat(3) + "\"auto\"] }")))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("exactly 5");
    assertThatThrownBy(
            () ->
                reader.read(
                    "x",
                    five.replace(
                        "\"auto\"",
                        "\"auto\", \"runs\": [{ \"sides\": [\"side 6\"], \"open\": \"bare\" }]")))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("\"side 6\" is not known here. The nearest known are side 1");
  }

  @Test
  void anOutlineOfTooManyPointsOrPiecesIsRefused() {
    String points = "[0, 0],".repeat(2000);
    String many =
        JobText.with(
            "{ \"rectangle\": { \"length\": 600, \"width\": 60 } }",
            "{ \"path\": [" + points + "[1, 1]] }");
    assertThatThrownBy(() -> reader.read("x", many))
        .isInstanceOf(InputRefused.class)
        .hasMessageContaining("2001 items");
  }

  @Test
  void aRoundOutlineHasOneSide() {
    String round =
        JobText.with(
                "\"rectangle\": { \"length\": 600, \"width\": 60 }",
                "\"circle\": {\"diameter\": 90}")
            .replace("\"board\":", "\"sides\": {\"back\": \"butting\"}, \"board\":");
    assertThatThrownBy(() -> reader.read("nook.json", round))
        .isInstanceOfSatisfying(
            InputRefused.class, r -> assertThat(r.path()).isEqualTo("$.parts[0].base.sides"));
  }

  @Test
  void limitsInAJobInInchesAreSaidInInches() {
    String inches = JobText.with("\"units\": \"mm\"", "\"units\": \"in\"");
    assertThatThrownBy(() -> reader.read("nook.json", inches))
        .isInstanceOfSatisfying(
            InputRefused.class,
            r -> {
              // Length 600 in is more than 10 m = 393.7 in; the first size that cannot be.
              assertThat(r.path()).isEqualTo("$.parts[0].base.outline.rectangle.length");
            });
    String thick =
        inches.replace("\"length\": 600, \"width\": 60", "\"length\": 24, \"width\": 2.5");
    assertThatThrownBy(() -> reader.read("nook.json", thick))
        .isInstanceOfSatisfying(
            InputRefused.class,
            r -> {
              assertThat(r.path()).isEqualTo("$.parts[0].base.thickness");
              // 100 mm / 25.4 = 3.937 in.
              assertThat(r.remedy()).contains("3.937 in");
            });
  }
}
