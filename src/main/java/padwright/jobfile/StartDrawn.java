package padwright.jobfile;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import padwright.design.Fittings;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Corners;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;

/**
 * Puts a drawn outline into a ready-made part. What belonged to the old outline goes with it: what
 * its size meant, its neighbours, holes, screw places, runs, and treatments told corner by corner.
 */
final class StartDrawn {
  private StartDrawn() {}

  static WrappedPad applied(WrappedPad pad, Optional<StartOutline> drawn) {
    if (drawn.isEmpty()) {
      return pad;
    }
    Base b = pad.base();
    Base base =
        new Base(
            drawn.get().outline(),
            SizeMeaning.BOARD,
            Collections.nCopies(4, Neighbour.FREE),
            OptionalDouble.empty(),
            b.board(),
            b.thickness(),
            b.measured(),
            b.backArris(),
            List.of());
    Corners c = pad.corners();
    Corners corners =
        c.treatments().size() == 1
            ? c
            : new Corners(List.of(Treatment.AUTO), c.reliefStop(), c.pleatDepth());
    Host h = pad.host();
    Host host =
        new Host(h.fixing(), h.thickness(), h.finish(), h.screw(), h.screwLength(), List.of());
    // The size is the drawing's doing, whatever the ready-made part says.
    Set<String> restated = new HashSet<>(pad.restated());
    restated.add(Restated.SIZE);
    return new WrappedPad(
        pad.id(),
        pad.name(),
        pad.kind(),
        pad.quantity(),
        pad.mirrored(),
        pad.front(),
        base,
        pad.foam(),
        pad.wadding(),
        pad.edge(),
        pad.cover(),
        corners,
        pad.staples(),
        host,
        pad.dustCover(),
        List.of(),
        new Fittings(drawn.get().cutOuts(), List.of(), List.of(), List.of()),
        restated);
  }
}
