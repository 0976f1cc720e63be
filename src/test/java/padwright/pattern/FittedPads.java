package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import padwright.design.Finding;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.ThreadedInsert;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.Zone;
import padwright.design.Fittings.ZoneKind;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.DustCover;
import padwright.design.WrappedPad.Hole;

/**
 * Builds pads with cut-outs and fittings for tests: a panel of 600 x 400, board 12, one layer of
 * firm foam of 12 that stands flush, covering 1.0, turn-under 20.
 */
public final class FittedPads {
  public final Pads pads = new Pads();
  public final List<CutOut> cutOuts = new ArrayList<>();
  public final List<Hole> vents = new ArrayList<>();
  public final List<ThreadedInsert> inserts = new ArrayList<>();
  public final List<Zone> zones = new ArrayList<>();
  public boolean dustCover = true;

  public FittedPads() {
    pads.outline = Pads.rectangle(600, 400);
    pads.foam = List.of(Pads.layer(12, 0));
    pads.kind = WrappedPad.Kind.PANEL;
  }

  public FittedPads cut(OutlineShape shape, double x, double y) {
    cutOuts.add(new CutOut(shape, x, y, Through.TURNED));
    return this;
  }

  public FittedPads whole(OutlineShape shape, double x, double y) {
    cutOuts.add(new CutOut(shape, x, y, Through.WHOLE));
    return this;
  }

  public FittedPads vent(double x, double y, double diameter) {
    vents.add(new Hole(x, y, diameter));
    return this;
  }

  public FittedPads insert(double x, double y) {
    inserts.add(new ThreadedInsert(x, y, 8, 22));
    return this;
  }

  public FittedPads zone(ZoneKind kind, double x, double y, double length, double width) {
    zones.add(new Zone(kind, x, y, length, width));
    return this;
  }

  public WrappedPad pad() {
    WrappedPad p = pads.pad();
    return new WrappedPad(
        p.id(),
        p.name(),
        p.kind(),
        p.quantity(),
        p.mirrored(),
        p.front(),
        p.base(),
        p.foam(),
        p.wadding(),
        p.edge(),
        p.cover(),
        p.corners(),
        p.staples(),
        p.host(),
        new DustCover(dustCover, OptionalDouble.empty(), OptionalDouble.empty()),
        p.runs(),
        new Fittings(cutOuts, vents, inserts, zones));
  }

  public PartResult run() {
    return new PatternEngine(Pads.CATALOGUE).run(pad());
  }

  /** The findings of one rule. */
  static List<Finding> of(PartResult part, String rule) {
    return part.findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }
}
