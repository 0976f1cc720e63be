package padwright.jobfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import padwright.design.Fittings;
import padwright.design.Fittings.CutOut;
import padwright.design.Fittings.ThreadedInsert;
import padwright.design.Fittings.Through;
import padwright.design.Fittings.Zone;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Run;

/** Turns runs and fittings into maps and lists, the mirror of their readers. */
final class RunWriter {
  private final PartWriter parts;

  RunWriter(PartWriter parts) {
    this.parts = parts;
  }

  void put(Map<String, Object> part, WrappedPad pad) {
    if (!pad.runs().isEmpty()) {
      part.put("runs", pad.runs().stream().map(this::run).toList());
    }
    if (!pad.fittings().equals(Fittings.none())) {
      part.put("fittings", fittings(pad.fittings()));
    }
  }

  private Map<String, Object> run(Run run) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("sides", run.sides());
    run.edge().ifPresent(e -> m.put("edge", parts.edge(e)));
    parts.put(m, "turnUnder", run.turnUnder());
    parts.put(m, "overhang", run.overhang());
    run.open().ifPresent(o -> m.put("open", Words.OPEN.word(o)));
    parts.put(m, "passage", run.passage());
    return m;
  }

  private Map<String, Object> fittings(Fittings f) {
    Map<String, Object> m = new LinkedHashMap<>();
    put(m, "cutOuts", f.cutOuts().stream().map(this::cutOut).toList());
    put(m, "vents", parts.holes(f.vents()));
    put(m, "tNuts", f.inserts().stream().map(this::insert).toList());
    put(m, "zones", f.zones().stream().map(this::zone).toList());
    return m;
  }

  private static void put(Map<String, Object> m, String field, List<Map<String, Object>> list) {
    if (!list.isEmpty()) {
      m.put(field, new ArrayList<>(list));
    }
  }

  private Map<String, Object> cutOut(CutOut cutOut) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("outline", parts.outline(cutOut.shape()));
    at(m, cutOut.x(), cutOut.y());
    if (cutOut.through() != Through.TURNED) {
      m.put("covering", Words.THROUGH.word(cutOut.through()));
    }
    return m;
  }

  private Map<String, Object> insert(ThreadedInsert insert) {
    Map<String, Object> m = new LinkedHashMap<>();
    at(m, insert.x(), insert.y());
    parts.put(m, "barrel", insert.barrel());
    parts.put(m, "flange", insert.flange());
    return m;
  }

  private Map<String, Object> zone(Zone zone) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("kind", Words.ZONE.word(zone.kind()));
    at(m, zone.x(), zone.y());
    parts.put(m, "length", zone.length());
    parts.put(m, "width", zone.width());
    return m;
  }

  private void at(Map<String, Object> m, double x, double y) {
    parts.put(m, "x", x);
    parts.put(m, "y", y);
  }
}
