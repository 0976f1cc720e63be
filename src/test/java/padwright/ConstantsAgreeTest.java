package padwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import padwright.material.Constants;

/** Every number of a rule that stands in code is the one in the shared table, with its source. */
class ConstantsAgreeTest {
  private static final Map<String, String> ROWS =
      Map.ofEntries(
          Map.entry("cover.StripCover#FURTHER", "strip-beyond-most"),
          Map.entry("fastening.SlitPlanner#NEAREST", "cutout-slit-nearest"),
          Map.entry("fastening.SlitPlanner#CORNER", "cutout-corner-sine"),
          Map.entry("shape.SectionBuilder#NEUTRAL", "neutral-line-share"),
          Map.entry("cover.WrapProof#HIDING", "hiding-least"),
          Map.entry("cover.WrapProof#SHORTFALL", "turn-under-shortfall"),
          Map.entry("cover.WrapProof#BARE", "bare-least"),
          Map.entry("cover.CornerChooser#NARROW", "mitred-end-width"),
          Map.entry("cover.CornerChooser#THICK", "wall-thick"),
          Map.entry("cover.CornerChooser#ROUNDED", "rounded-corner-radius"),
          Map.entry("cover.CornerChooser#SAGITTA", "pleat-sagitta-most"),
          Map.entry("cover.CornerChooser#PLEAT_DEPTH", "pleat-depth"),
          Map.entry("cover.CornerChooser#NOTCH_SPACING", "notch-spacing"),
          Map.entry("cover.SweepCover#WIDEST_NOTCH", "notch-widest"),
          Map.entry("cover.CornerCut#JOINED", "corner-past-arris"),
          Map.entry("fastening.StapleDepths#LEAST_MARGIN", "staple-margin-least"),
          Map.entry("fastening.StapleDepths#GOOD_HOLD", "staple-hold-good"),
          Map.entry("fastening.StapleDepths#POOR_HOLD", "staple-hold-least"),
          Map.entry("fastening.Withdrawal#NAIL", "nail-withdrawal-factor"),
          Map.entry("fastening.Withdrawal#SCREW", "screw-withdrawal-factor"),
          Map.entry("fastening.KeepClear#HOLE_CLEAR", "staple-hole-clear"),
          Map.entry("fastening.FittingPlan#CUT_CLEAR", "staple-cut-clear"),
          Map.entry("fastening.FittingPlan#BEHIND_STAPLE", "staple-behind"),
          Map.entry("fastening.SlitPlanner#STOP", "cutout-slit-stop"),
          Map.entry("fastening.SlitPlanner#SPACING", "cutout-slit-spacing"),
          Map.entry("fastening.SlitPlanner#SAGITTA", "pleat-sagitta-most"),
          Map.entry("fastening.TongueStaples#BESIDE", "tongue-beside-crown"),
          Map.entry("fastening.VentPlanner#FOAM", "vent-foam-least"),
          Map.entry("fastening.VentPlanner#DIAMETER", "vent-diameter"),
          Map.entry("fastening.VentPlanner#FROM_SIDES", "vent-from-sides"),
          Map.entry("fastening.VentPlanner#PITCH", "vent-pitch"),
          Map.entry("fastening.VentPlanner#TWO_ROWS", "vent-two-rows"),
          Map.entry("fastening.VentPlanner#APART", "fitting-apart"),
          Map.entry("pattern.InsertRules#EDGE", "insert-edge"),
          Map.entry("pattern.CutOutRules#LAP", "cutout-lining-lap"),
          Map.entry("fastening.StaplePlan#WIDER", "staple-gap-worth-a-word"),
          Map.entry("fastening.StapleLine#ON_CURVES", "staple-spacing-curve"),
          Map.entry("fastening.StapleLine#SMALL_CURVE", "staple-curve-least"),
          Map.entry("fastening.StapleLine#THROUGH_FLAP", "staple-through-flap"),
          Map.entry("fastening.MountingPlanner#PACKING_CLEAR", "packing-clear"),
          Map.entry("fastening.MountingPlanner#ONE_ROW", "screw-one-row-width"),
          Map.entry("pattern.PadBuild#BEHIND_STAPLE", "staple-behind"),
          Map.entry("pattern.FitPool#WORTH", "fit-sheet-worth"),
          Map.entry("pattern.FitCandidate#STEP", "fit-step"),
          Map.entry("pattern.FitTrial#OFFERED", "fit-error-offered"),
          Map.entry("pattern.PadBuild#CORNER_CLEAR", "staple-corner-free"),
          Map.entry("pattern.HollowRules#OVERLAP", "folds-overlap-share"),
          Map.entry("pattern.RunRules#SPLAY", "held-sides-splay"),
          Map.entry("pattern.OutlineRules#LARGE", "kinks-stop-times"),
          Map.entry("geometry.ChordArcs#MOST_OFF", "chord-off-most"),
          Map.entry("geometry.ChordArcs#ON_CIRCLE", "chord-points-on-circle"),
          Map.entry("geometry.ChordArcs#SURE", "chord-arc-sure-times"),
          Map.entry("geometry.ChordArcs#MOST_DEGREES", "chord-turn-most"),
          Map.entry("pattern.FindingRules#FLAP_STRAIN", "flap-strain-worth-a-note"),
          Map.entry("fastening.Crowns#APART", "staple-crowns-apart"),
          Map.entry("fastening.Crowns#NEAREST", "staple-crowns-nearest"),
          Map.entry("fastening.SpreadPlaces#APART", "screw-apart"),
          Map.entry("fastening.Mounting#STRIP", "packing-strip-ratio"),
          Map.entry("fastening.StapleLine#SLIGHT_TURN", "fold-turn-slight"),
          Map.entry("cover.HollowChooser#CLIP_SPACING", "clip-spacing"),
          Map.entry("cover.HollowChooser#CLIP_TIP", "clip-tip"),
          Map.entry("cover.HollowChooser#STRETCHED", "hollow-stretched"),
          Map.entry("cover.HollowChooser#SLIGHT_STRETCH", "hollow-stretch-slight"),
          Map.entry("cover.Gusset#ALLOWANCE", "gusset-allowance"),
          Map.entry("pattern.PassageLayer#LEFT", "passage-left"),
          Map.entry("cover.GussetPieces#ABOVE_TIP", "gusset-above-tip"),
          Map.entry("cover.GussetPieces#DOWN_THE_ARRIS", "gusset-arris-allowance"),
          Map.entry("cover.Gusset#MOST_SLANT", "gusset-slant-most"),
          Map.entry("cover.GussetHalf#SHORT", "gusset-rung-short-most"),
          Map.entry("pattern.HollowRules#SLANTED", "gusset-slant-least"),
          Map.entry("cover.LayerCounter#GATHERS", "gather-turn-least"),
          Map.entry("cover.Gusset#OPENS", "gusset-opens-least"),
          Map.entry("cover.FoldMap#ARRIS", "arris-bend"),
          Map.entry("cover.HollowCorners#TIGHT", "hollow-tight-factor"),
          Map.entry("cover.NotchedArcs#WIDEST", "notch-widest-share"),
          Map.entry("shape.Outlines#CORNER", "corner-turn-least"),
          Map.entry("cover.CutLine#LEAST_RADIUS", "hollow-radius-least"),
          Map.entry("cover.SweepCover#BEYOND", "cut-beyond-most"),
          Map.entry("cover.SweepCover#FURTHEST", "cut-apart-most"),
          Map.entry("pattern.FoamSheets#SERVES", "foam-sheet-serves"),
          Map.entry("pattern.FoldLines#ROUND", "fold-round-radius"),
          Map.entry("export.pdf.PrintCorrection#LEAST", "print-measured-least"),
          Map.entry("export.pdf.PrintCorrection#MOST", "print-measured-most"),
          Map.entry("fastening.Withdrawal#NAIL_EXPONENT", "nail-withdrawal-exponent"),
          Map.entry("fastening.Withdrawal#SCREW_EXPONENT", "screw-withdrawal-exponent"),
          Map.entry("pattern.MountingRules#TAPE", "tape-mismatch-factor"),
          Map.entry("fastening.StapleLine#CORNER_SHARE", "staple-corner-free-share"),
          Map.entry("fastening.StaplePlanner#NARROW", "mitred-end-width"),
          Map.entry("export.pdf.OrderOfWork#NARROW", "mitred-end-width"),
          Map.entry("fastening.StaplePlanner#PRESSED_FIBRE_CORNER", "staple-corner-pressed-fibre"),
          Map.entry("fastening.MountingPlanner#LEAST_MARGIN", "staple-margin-least"),
          Map.entry("export.pdf.Tiling#OVERLAP", "tile-overlap"),
          Map.entry("export.CheckLine#LENGTH", "check-line"),
          Map.entry("export.pdf.PrintCorrection#CHECK_LENGTH", "check-line"),
          Map.entry("export.Lettering#NAME", "label-height"),
          Map.entry("export.Lettering#NOTE", "note-height"),
          Map.entry("dome.DomeAnalyst#SURPLUS", "dome-surplus-least"),
          Map.entry("dome.FaceProfile#WALL", "dome-wall"),
          Map.entry("dome.FaceProfile#NARROW", "dome-bend-narrow"),
          Map.entry("dome.HipTracer#LEAST_TURN", "dome-seam-turn-least"),
          Map.entry("dome.HipTracer#SEAM_EACH", "dome-seam-each"),
          Map.entry("dome.Patches#RADIUS", "dome-patch"),
          Map.entry("measure.Length#LARGEST", "length-largest"),
          Map.entry("material.RowReader#LONGEST", "length-largest"));

  /**
   * Numbers of how finely is reckoned, not of how a part is made: chord errors, steps, what is
   * rounding, and units. Each has its reason where it stands.
   */
  private static final Set<String> RECKONING =
      Set.of(
          "shape.EdgeEnds#FLUSH",
          "shape.Outlines#SHARP",
          "shape.SectionBuilder#INSIDE",
          "shape.TautPath#LEVEL",
          "cover.CornerChooser#EVEN",
          "cover.CutLine#EVEN",
          "cover.SkeletonBuilder#NO_LENGTH",
          "pattern.Laid#STEP",
          "cover.CornerCut#PAST_THE_ARRIS",
          "cover.CornerFolds#NOTHING",
          "cover.CornerFrame#FLAP_BEGINS",
          "cover.CoverDeveloper#CLIP_CHORD",
          "cover.FacetMaker#UPRIGHT",
          "cover.FacetMaker#LEAST_AREA",
          "cover.FlapStrain#NARROWEST",
          "cover.FlapStrain#SAME",
          "cover.StrainField#SAME_STEP",
          "cover.SweepStrain#APART",
          "cover.SweepStrain#WITHIN",
          "cover.BandChain#ONE",
          "cover.CoverReach#AS_NEAR",
          "cover.LaidCover#SAME_LEVEL",
          "cover.OnBack#AT_BACK",
          "cover.SweepSheets#CHORD_ERROR",
          "cover.SweepSheets#WEDGE",
          "cover.LaidCover#CHORD",
          "cover.LaidCover#SMALL",
          "cover.LaidCover#LEAST_AREA",
          "cover.FoldMap#ON_THE_LINE",
          "cover.FoldMap#ROUNDING",
          "cover.GussetHalf#FIRST",
          "cover.GussetHalf#APART",
          "cover.GussetHalf#NEAREST",
          "cover.GussetPieces#DRAWN",
          "cover.GussetSeams#ON_SEAM",
          "cover.StripCover#SLIGHT",
          "cover.StripCover#ROUNDING",
          "cover.StripCover#ROUNDING_SHARE",
          "cover.SweepCover#SAME",
          "cover.SweepFacets#TURN",
          "cover.SweepFacets#TOUCH",
          "cover.WrapProof#SLACK",
          "cover.RawEdges#WALK",
          "dome.DomedTop#JOINED",
          "dome.DomedTop#SAME",
          "dome.FaceCheck#SAME",
          "dome.FaceProfile#CLOSEST",
          "dome.FaceProfile#LEVEL",
          "dome.FaceProfile#NEARLY_LEVEL",
          "dome.FaceProfile#SAME",
          "dome.FaceRow#SHORTEST",
          "dome.FaceSides#ALONGSIDE",
          "dome.FaceSides#NEAR_ENOUGH",
          "dome.FaceSides#SAME",
          "dome.DomeMesh#CHORD_ERROR",
          "dome.DomeMesh#EVEN",
          "dome.DomeMesh#ALONG",
          "dome.DomeMesh#CLOSEST",
          "dome.DomeMesh#PATCH",
          "fastening.HoleRows#STEP",
          "fastening.HoleRows#SAME",
          "fastening.MountingPlanner#FLAT",
          "fastening.SlitPlanner#SAME",
          "fastening.SlitPlanner#FINEST",
          "fastening.StapleLine#FLAT",
          "fastening.StaplePlanner#FLAT",
          "fastening.StaplePlanner#HALF_TURNED",
          "fastening.VentPlanner#STEP",
          "fastening.VentPlanner#FLAT",
          "pattern.CoverStaples#CHORD_ERROR",
          "pattern.CoverStaples#SAME",
          "pattern.CoverStaples#TOUCHES",
          "pattern.CoverStaples#BOTH",
          "pattern.CutOutRules#SAME",
          "pattern.HollowRules#ALIKE",
          "pattern.DryFit#SAID",
          "pattern.FindingRules#ROUNDING",
          "pattern.RunRules#NEAR",
          "pattern.FoldLines#NEAR",
          "pattern.FiguresMaker#MM3_PER_M3",
          "pattern.FiguresMaker#MM2_PER_M2",
          "pattern.FitCandidate#SAME",
          "pattern.FitPool#SAME",
          "pattern.FitTrial#SAME",
          "pattern.HeightFit#SAME",
          "pattern.PatternEngine#CHORD_ERROR",
          "pattern.PieceEdges#SQUARELY",
          "pattern.PieceEdges#HALF",
          "pattern.PieceEdges#FLAT",
          "pattern.PieceEdges#SHORT",
          "pattern.PieceMaker#CHORD_ERROR",
          "pattern.PieceMaker#SAME",
          "pattern.SheetStacks#SAME",
          "pattern.ZoneRules#SAME",
          "pattern.ZoneRules#MM2_PER_CM2");

  private static final List<String> RULED =
      List.of("shape", "cover", "dome", "fastening", "pattern");

  @Test
  void everyNumberOfARuleIsInTheTable() throws IOException, ReflectiveOperationException {
    Set<String> found = new TreeSet<>();
    for (String part : RULED) {
      try (Stream<Path> files = Files.list(Path.of("src/main/java/padwright", part))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          String name = part + "." + file.getFileName().toString().replace(".java", "");
          if (!name.endsWith("package-info")) {
            numbers(name).forEach(f -> found.add(name + "#" + f));
          }
        }
      }
    }
    assertThat(found).hasSizeGreaterThan(100);
    assertThat(found).as("named as reckoning and gone").containsAll(RECKONING);
    found.removeAll(RECKONING);
    assertThat(ROWS.keySet()).as("neither in the table nor named as reckoning").containsAll(found);
  }

  private static List<String> numbers(String name) throws ReflectiveOperationException {
    return Arrays.stream(Class.forName("padwright." + name).getDeclaredFields())
        .filter(f -> Modifier.isStatic(f.getModifiers()) && Modifier.isFinal(f.getModifiers()))
        .filter(f -> f.getType() == double.class)
        .map(Field::getName)
        .toList();
  }

  @Test
  void codeAndTableAgree() throws ReflectiveOperationException {
    for (Map.Entry<String, String> row : ROWS.entrySet()) {
      String[] place = row.getKey().split("#", 2);
      Field field = Class.forName("padwright." + place[0]).getDeclaredField(place[1]);
      field.setAccessible(true);
      assertThat(((Number) field.get(null)).doubleValue())
          .as(row.getKey())
          .isEqualTo(Constants.value(row.getValue()));
      assertThat(Constants.row(row.getValue()).origin().source()).isNotBlank();
    }
  }
}
