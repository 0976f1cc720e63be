package padwright.pattern;

import java.util.List;
import padwright.design.Defaults;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.material.Status;

/** Names the fields that mean something plain where a job leaves them out. */
final class PlainDefaults {
  private static final String PLAIN = "unless the job says otherwise";

  private PlainDefaults() {}

  /**
   * @param fit how the part keeps clear of an opening
   */
  static void note(Defaults defaults, WrappedPad pad, MakeUp made, DryFit fit) {
    plain(defaults, pad.base().size() == SizeMeaning.BOARD, "base.size", "board");
    plain(defaults, pad.front() == WrappedPad.Side.FRONT, "front", "front");
    plain(defaults, pad.base().backArris() == 0, "base.backArris", "sharp");
    plain(defaults, pad.edge() instanceof EdgeShape.Square, "edge", "square");
    plain(defaults, pad.wadding().isEmpty(), "wadding", "none");
    boolean top = pad.wadding().isPresent() && !made.stack.waddingOverSides();
    plain(defaults, top, "wadding.over", "top");
    boolean stretch = pad.cover().stretchAlong() == 0 && pad.cover().stretchAcross() == 0;
    plain(defaults, stretch, "cover.stretchAllowance", "0");
    plain(defaults, !pad.cover().warpAlongWidth(), "cover.warp", "length");
    boolean auto = pad.corners().treatments().equals(List.of(WrappedPad.Treatment.AUTO));
    plain(defaults, auto, "corners", "auto");
    plain(defaults, pad.dustCover().wanted(), "dustCover", "true");
    plain(defaults, pad.host().fixing() == WrappedPad.Fixing.NONE, "host.fixing", "none");
    clearance(defaults, pad, fit);
    defaults.note("foam squash", "none", "sizes are for foam at its full thickness", Status.OWN);
  }

  private static void plain(Defaults defaults, boolean is, String field, String value) {
    if (is) {
      defaults.note(field, value, PLAIN, Status.OWN);
    }
  }

  private static void clearance(Defaults defaults, WrappedPad pad, DryFit fit) {
    boolean kept =
        pad.base().size() != SizeMeaning.BOARD
            && pad.base().sides().contains(Neighbour.KEEP_CLEAR)
            && pad.base().clearance().isEmpty();
    if (!kept) {
      return;
    }
    defaults.note(
        "base.clearance",
        fit.clearances(),
        "3/16 in (4.8 mm) less the layers of covering on that side, and never under 1.5 mm",
        Status.PUBLISHED);
  }
}
