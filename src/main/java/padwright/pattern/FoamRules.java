package padwright.pattern;

import static padwright.design.Finding.Level.CAUTION;
import static padwright.design.Finding.Level.NOTE;
import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.PadSpec;

/** What is to be said of the foam: its sheets, and whether a layer stepped back is still one. */
final class FoamRules {
  private FoamRules() {}

  /**
   * A layer that is no longer one whole outline inside the base's.
   *
   * @param layer from 1
   * @param crown whether it is a crown, which need not reach into every arm
   * @param in how far it is stepped back at most, mm
   * @param pieces into how many it falls
   * @param along name of a side that has none of it; empty where it falls apart
   */
  record Apart(int layer, boolean crown, double in, int pieces, String along) {}

  static List<Finding> of(PadSpec spec, List<Apart> apart) {
    List<Finding> findings = new ArrayList<>();
    for (Apart a : apart) {
      boolean small = a.crown() && a.pieces() == 1;
      findings.add(
          Finding.of(
              "foam-apart",
              small ? CAUTION : STOP,
              FindingRules.text("Foam layer %d, stepped back %.1f, ", a.layer(), a.in())
                  + (a.along().isEmpty()
                      ? FindingRules.text(
                          "falls into %d pieces where the outline is narrow; the cover is worked out"
                              + " for one.",
                          a.pieces())
                      : "is used up along " + a.along() + ", where the outline is too narrow."),
              a.in(),
              0,
              "mm",
              "geometry of the base",
              "Step it back less, widen the outline there, or make two parts of it"));
    }
    for (int i = 0; i < spec.foam().size(); i++) {
      PadSpec.FoamSpec f = spec.foam().get(i);
      FoamSheets sheets = new FoamSheets(f.foam().sheets(), f.thickness());
      if (!sheets.sold()) {
        findings.add(
            Finding.of(
                "foam-sheet",
                NOTE,
                FindingRules.text(
                    "Foam layer %d is %.1f thick; the nearest sheets of %s are %s.",
                    i + 1, f.thickness(), f.foam().name(), sheets.near()),
                f.thickness(),
                sheets.nearest(),
                "mm",
                f.foam().origin().source(),
                sheets.remedy()));
      }
    }
    return findings;
  }
}
