package padwright.jobfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.OutlineShape.Circle;
import padwright.design.OutlineShape.Ellipse;
import padwright.design.OutlineShape.FreePath;
import padwright.design.OutlineShape.Leg;
import padwright.design.OutlineShape.Point;
import padwright.design.OutlineShape.Rectangle;
import padwright.design.OutlineShape.Trapezoid;
import padwright.design.Units;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Corners;
import padwright.design.WrappedPad.Cover;
import padwright.design.WrappedPad.DustCover;
import padwright.design.WrappedPad.Finish;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Hole;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Neighbour;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Staples;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.geometry.Vec2;

/** Turns one part into maps and lists, the mirror of {@link PartReader}. */
final class PartWriter {
  private final Units units;

  PartWriter(Units units) {
    this.units = units;
  }

  Map<String, Object> part(WrappedPad pad) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("id", pad.id());
    m.put("name", pad.name());
    m.put("build", "wrapped");
    m.put("kind", Words.KIND.word(pad.kind()));
    m.put("quantity", pad.quantity());
    if (pad.mirrored() != 0) {
      m.put("mirrored", pad.mirrored());
    }
    if (Restated.writes(pad, Restated.FRONT)) {
      m.put("front", Words.SIDE.word(pad.front()));
    }
    m.put("base", base(pad));
    m.put("foam", pad.foam().stream().map(this::foam).toList());
    pad.wadding().ifPresent(w -> m.put("wadding", wadding(w, Restated.writes(pad, Restated.OVER))));
    if (Restated.writes(pad, Restated.EDGE)) {
      m.put("edge", edge(pad.edge()));
    }
    m.put("cover", cover(pad));
    boolean treatment = Restated.writes(pad, Restated.CORNERS);
    if (treatment || !Restated.silent(pad.corners())) {
      m.put("corners", corners(pad.corners(), treatment));
    }
    putUnlessEmpty(m, "staples", staples(pad.staples()));
    if (Restated.writes(pad, Restated.HOST)) {
      m.put("host", host(pad.host()));
    }
    if (Restated.writes(pad, Restated.DUST_COVER)) {
      m.put("dustCover", dustCover(pad.dustCover()));
    }
    new RunWriter(this).put(m, pad);
    return m;
  }

  private Map<String, Object> base(WrappedPad pad) {
    Base base = pad.base();
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("outline", outline(base.outline()));
    if (Restated.writes(pad, Restated.SIZE)) {
      m.put("size", Words.SIZE.word(base.size()));
    }
    Neighbour usual = base.size() == SizeMeaning.OPENING ? Neighbour.KEEP_CLEAR : Neighbour.FREE;
    if (base.sides().stream().anyMatch(s -> s != usual)) {
      Map<String, Object> sides = new LinkedHashMap<>();
      for (Side side : Side.values()) {
        sides.put(Words.SIDE.word(side), Words.NEIGHBOUR.word(base.sides().get(side.ordinal())));
      }
      m.put("sides", sides);
    }
    put(m, "clearance", base.clearance());
    m.put("board", base.board());
    put(m, "thickness", base.thickness());
    put(m, "measured", base.measured());
    if (Restated.writes(pad, Restated.ARRIS)) {
      put(m, "backArris", base.backArris());
    }
    if (!base.holes().isEmpty()) {
      m.put("holes", holes(base.holes()));
    }
    return m;
  }

  Map<String, Object> outline(OutlineShape shape) {
    if (shape instanceof FreePath f) {
      return Map.of("path", f.points().stream().map(this::point).toList());
    }
    Map<String, Object> m = new LinkedHashMap<>();
    if (shape instanceof Rectangle r) {
      put(m, "length", r.length());
      put(m, "width", r.width());
      if (r.radii().stream().distinct().count() > 1) {
        m.put("radii", r.radii().stream().map(this::length).toList());
      } else if (r.radii().get(0) != 0) {
        put(m, "radius", r.radii().get(0));
      }
      return Map.of("rectangle", m);
    } else if (shape instanceof Trapezoid t) {
      put(m, "front", t.front());
      put(m, "back", t.back());
      put(m, "depth", t.depth());
      return Map.of("trapezoid", m);
    } else if (shape instanceof Ellipse e) {
      put(m, "length", e.length());
      put(m, "width", e.width());
      return Map.of("ellipse", m);
    }
    put(m, "diameter", ((Circle) shape).diameter());
    return Map.of("circle", m);
  }

  private Object point(Point point) {
    List<Object> at = pair(point.at());
    if (point.leg() instanceof Leg.Cubic c) {
      Map<String, Object> m = new LinkedHashMap<>();
      m.put("at", at);
      m.put("cubic", List.of(pair(c.first()), pair(c.second())));
      return m;
    }
    return point.leg() instanceof Leg.Arc a ? List.of(at.get(0), at.get(1), plain(a.bulge())) : at;
  }

  private List<Object> pair(Vec2 p) {
    return List.of(length(p.x()), length(p.y()));
  }

  List<Map<String, Object>> holes(List<Hole> holes) {
    List<Map<String, Object>> list = new ArrayList<>();
    for (Hole hole : holes) {
      Map<String, Object> m = new LinkedHashMap<>();
      put(m, "x", hole.x());
      put(m, "y", hole.y());
      put(m, "diameter", hole.diameter());
      list.add(m);
    }
    return list;
  }

  private Map<String, Object> foam(FoamLayer layer) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("foam", layer.foam());
    put(m, "thickness", layer.thickness());
    put(m, "overhang", layer.overhang());
    if (layer.crown()) {
      m.put("crown", true);
    }
    return m;
  }

  private Map<String, Object> wadding(WaddingLayer wadding, boolean over) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("wadding", wadding.wadding());
    put(m, "thickness", wadding.thickness());
    if (over) {
      m.put("over", wadding.overSides() ? "top and sides" : "top");
    }
    return m;
  }

  Object edge(EdgeShape edge) {
    if (edge instanceof EdgeShape.Round r) {
      return Map.of("round", length(r.radius()));
    } else if (edge instanceof EdgeShape.Bevel b) {
      return Map.of("bevel", length(b.size()));
    }
    return edge instanceof EdgeShape.FullRound ? "full round" : "square";
  }

  private Map<String, Object> cover(WrappedPad pad) {
    Cover cover = pad.cover();
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("covering", cover.covering());
    put(m, "thickness", cover.thickness());
    put(m, "turnUnder", cover.turnUnder());
    put(m, "grip", cover.grip());
    if (Restated.writes(pad, Restated.STRETCH)) {
      Map<String, Object> stretch = new LinkedHashMap<>();
      stretch.put("along", plain(cover.stretchAlong()));
      stretch.put("across", plain(cover.stretchAcross()));
      m.put("stretchAllowance", stretch);
    }
    if (Restated.writes(pad, Restated.WARP)) {
      m.put("warp", cover.warpAlongWidth() ? "width" : "length");
    }
    return m;
  }

  private Object corners(Corners corners, boolean treatment) {
    List<String> words = corners.treatments().stream().map(Words.TREATMENT::word).toList();
    boolean one = words.size() == 1;
    if (one && corners.reliefStop().isEmpty() && corners.pleatDepth().isEmpty()) {
      return words.get(0);
    }
    Map<String, Object> m = new LinkedHashMap<>();
    if (!one) {
      m.put("each", words);
    } else if (treatment) {
      m.put("treatment", words.get(0));
    }
    put(m, "reliefStop", corners.reliefStop());
    put(m, "pleatDepth", corners.pleatDepth());
    return m;
  }

  private Map<String, Object> staples(Staples staples) {
    Map<String, Object> m = new LinkedHashMap<>();
    staples.staple().ifPresent(s -> m.put("staple", s));
    put(m, "leg", staples.leg());
    put(m, "spacing", staples.spacing());
    put(m, "edgeDistance", staples.edgeDistance());
    staples.pull().ifPresent(p -> m.put("pull", plain(p)));
    return m;
  }

  private Map<String, Object> host(Host host) {
    Map<String, Object> m = new LinkedHashMap<>();
    m.put("fixing", Words.FIXING.word(host.fixing()));
    put(m, "thickness", host.thickness());
    if (host.finish() != Finish.BARE) {
      m.put("finish", Words.FINISH.word(host.finish()));
    }
    host.screw().ifPresent(s -> m.put("screw", s));
    put(m, "screwLength", host.screwLength());
    if (!host.positions().isEmpty()) {
      m.put("positions", holes(host.positions()));
    }
    return m;
  }

  private Object dustCover(DustCover dustCover) {
    Map<String, Object> m = new LinkedHashMap<>();
    put(m, "inset", dustCover.inset());
    put(m, "turn", dustCover.turn());
    return m.isEmpty() ? dustCover.wanted() : m;
  }

  void put(Map<String, Object> m, String field, double mm) {
    m.put(field, length(mm));
  }

  void put(Map<String, Object> m, String field, OptionalDouble mm) {
    mm.ifPresent(v -> put(m, field, v));
  }

  private static void putUnlessEmpty(Map<String, Object> m, String field, Map<String, Object> v) {
    if (!v.isEmpty()) {
      m.put(field, v);
    }
  }

  private Object length(double mm) {
    return LengthJson.of(mm, units);
  }

  private static BigDecimal plain(double v) {
    return LengthJson.number(BigDecimal.valueOf(v));
  }
}
