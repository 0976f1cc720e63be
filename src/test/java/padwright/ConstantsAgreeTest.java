package padwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.Map;
import org.junit.jupiter.api.Test;
import padwright.material.Constants;

/** Every number of a rule that stands in code is the one in the shared table, with its source. */
class ConstantsAgreeTest {
  private static final Map<String, String> ROWS =
      Map.ofEntries(
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
          Map.entry("pattern.FittingRules#GAP", "staple-gap-factor"),
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
          Map.entry("pattern.FindingRules#FLAP_STRAIN", "flap-strain-worth-a-note"));

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
