package padwright.cover;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import padwright.cover.Skeleton.Element;
import padwright.cover.Skeleton.Side;
import padwright.cover.Skeleton.Sweep;
import padwright.design.WrappedPad;
import padwright.geometry.Offset;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.shape.EdgeSections;
import padwright.shape.Outlines;
import padwright.shape.Passage;
import padwright.shape.TautPath;

/** Lays out the sides, facets and sweeps of a base outline for the corners chosen. */
final class SkeletonBuilder {
  /** A stretch this short is none, mm. */
  private static final double NO_LENGTH = 1e-6;

  private final Path outline;
  private final List<String> names;
  private final List<CornerSite> sites;
  private final List<CornerChoice> choices;
  private final double frontAngle;
  private final EdgeSections sections;
  private final Map<Element, Skeleton.Overrun> overruns = new IdentityHashMap<>();

  SkeletonBuilder(
      Path outline,
      List<String> names,
      List<CornerSite> sites,
      List<CornerChoice> choices,
      WrappedPad.Side front,
      EdgeSections sections) {
    this.sections = sections;
    this.outline = outline;
    this.names = names;
    this.sites = sites;
    this.choices = choices;
    this.frontAngle = -Math.PI / 2 + front.ordinal() * Math.PI / 2;
  }

  Skeleton build() {
    List<Element> elements = new ArrayList<>();
    List<Segment> segments = outline.segments();
    if (sites.size() == 1 && sites.get(0).closed()) {
      rim(elements);
      return new Skeleton(elements, sections::path);
    }
    // Passages alone have ways of their own; all other elements that of their name.
    Map<Element, TautPath> ways = new IdentityHashMap<>();
    int n = segments.size();
    for (int i = 0; i < n; i++) {
      Segment s = segments.get(i);
      int own = siteHolding(i);
      if (own >= 0) {
        if (pleated(own)) {
          if (sites.get(own).first() == i) {
            facets(elements, own);
          }
        } else {
          sweep(elements, i, own);
        }
        continue;
      }
      int before = siteHolding(Math.floorMod(i - 1, n));
      int after = siteHolding((i + 1) % n);
      Vec2 from = joinsPleats(before, i) ? lastVertex(before) : s.start();
      boolean toPleats = joinsPleats(after, i);
      Vec2 to = toPleats ? vertices(after).get(0) : s.end();
      int corner = toPleats ? after : cornerAfter(i);
      Fold fold = corner < 0 ? Fold.NONE : choices.get(corner).fold();
      Side side = new Side(names.get(i), from, to, false, fold, corner);
      Passage passage = sections.passages().get(names.get(i));
      if (passage == null) {
        elements.add(side);
        if (joinsPleats(before, i) || toPleats) {
          overruns.put(side, overrun(from, s, to, before, after));
        }
      } else {
        passage(elements, ways, passage, side, s);
      }
    }
    return new Skeleton(
        elements,
        elements.stream().map(e -> ways.getOrDefault(e, sections.path(e.name()))).toList(),
        overruns);
  }

  private Skeleton.Overrun overrun(Vec2 from, Segment own, Vec2 to, int before, int after) {
    double start = from.distance(own.start());
    double end = to.distance(own.end());
    int n = outline.segments().size();
    return new Skeleton.Overrun(
        start,
        start > 0 ? names.get((sites.get(before).first() + sites.get(before).arcs() - 1) % n) : "",
        end,
        end > 0 ? names.get(sites.get(after).first()) : "");
  }

  /**
   * A passage as level stretches. Where a pleated rounding's facets reach into its segment or stay
   * short of it, what lies between has the section of that end.
   *
   * @param whole from where the side takes over to where it hands on
   */
  private static void passage(
      List<Element> elements,
      Map<Element, TautPath> own,
      Passage passage,
      Side whole,
      Segment segment) {
    int n = passage.stations().size();
    List<Vec2> points = new ArrayList<>();
    List<TautPath> ways = new ArrayList<>();
    Vec2 along = segment.directionAt(0);
    if (segment.start().minus(whole.from()).dot(along) > NO_LENGTH) {
      points.add(whole.from());
      ways.add(passage.start().taut());
    }
    for (int k = 0; k < n; k++) {
      points.add(segment.pointAt((double) k / n));
      ways.add(passage.stations().get(k));
    }
    points.add(segment.end());
    if (whole.to().minus(segment.end()).dot(along) > NO_LENGTH) {
      points.add(whole.to());
      ways.add(passage.end().taut());
    }
    for (int k = 0; k < ways.size(); k++) {
      boolean last = k + 1 == ways.size();
      Side stretch =
          new Side(
              whole.name(),
              points.get(k),
              points.get(k + 1),
              false,
              last ? whole.after() : Fold.NONE,
              last ? whole.corner() : -1);
      elements.add(stretch);
      own.put(stretch, ways.get(k));
    }
  }

  /** The sharp corner that follows segment i, -1 where none does. */
  private int cornerAfter(int i) {
    for (int k = 0; k < sites.size(); k++) {
      if (sites.get(k).sharp() && sites.get(k).first() == i) {
        return k;
      }
    }
    return -1;
  }

  /** Whether a straight side runs on as the first or the last facet of a pleated rounding. */
  private boolean joinsPleats(int site, int side) {
    if (!pleated(site)) {
      return false;
    }
    int n = outline.segments().size();
    CornerSite s = sites.get(site);
    boolean before = (side + 1) % n == s.first();
    Segment line = outline.segments().get(side);
    Segment arc = outline.segments().get(before ? s.first() : (s.first() + s.arcs() - 1) % n);
    Vec2 u = line.directionAt(0);
    Vec2 v = arc.directionAt(before ? 0 : 1);
    return Math.abs(u.cross(v)) < Offset.SMOOTH;
  }

  private boolean pleated(int site) {
    return site >= 0 && !sites.get(site).sharp() && choices.get(site).pleats() > 0;
  }

  private void sweep(List<Element> elements, int i, int site) {
    Segment s = outline.segments().get(i);
    double from = s.directionAt(0).right().angle();
    int corner = cornerAfter(i);
    Fold fold = corner < 0 ? Fold.NONE : choices.get(corner).fold();
    elements.add(
        new Sweep(
            names.get(i), s.centre(), s.radius(), from, from + s.sweep(), site, fold, corner));
  }

  private int siteHolding(int i) {
    int n = outline.segments().size();
    for (int k = 0; k < sites.size(); k++) {
      CornerSite site = sites.get(k);
      if (!site.sharp() && Math.floorMod(i - site.first(), n) < site.arcs()) {
        return k;
      }
    }
    return -1;
  }

  private void rim(List<Element> elements) {
    CornerChoice choice = choices.get(0);
    if (choice.pleats() == 0) {
      for (int i = 0; i < outline.segments().size(); i++) {
        sweep(elements, i, 0);
      }
      return;
    }
    int n = choice.pleats();
    List<Vec2> vertices = new ArrayList<>();
    for (int j = 0; j < n; j++) {
      double a = frontAngle + (j - 0.5) * 2 * Math.PI / n;
      vertices.add(meet(a, a + 2 * Math.PI / n));
    }
    for (int j = 0; j < n; j++) {
      double normal = frontAngle + j * 2 * Math.PI / n + Math.PI / n;
      // The strip nearer the front lies on top, so that every pleat opens away from it.
      Fold fold =
          Math.sin(normal - frontAngle) >= 0 ? Fold.SINGLE_FIRST_OVER : Fold.SINGLE_SECOND_OVER;
      elements.add(
          new Side(
              Outlines.facing(frontAngle + j * 2 * Math.PI / n),
              vertices.get(j),
              vertices.get((j + 1) % n),
              true,
              fold,
              0));
    }
  }

  private void facets(List<Element> elements, int site) {
    CornerSite s = sites.get(site);
    List<Vec2> vertices = new ArrayList<>(vertices(site));
    int n = outline.segments().size();
    int before = Math.floorMod(s.first() - 1, n);
    int last = (s.first() + s.arcs() - 1) % n;
    // Where no side runs on as the first or the last facet, the facet ends where the arcs do.
    if (siteHolding(before) >= 0 || !joinsPleats(site, before)) {
      vertices.add(0, outline.segments().get(s.first()).start());
    }
    int after = (last + 1) % n;
    boolean ends = siteHolding(after) >= 0 || !joinsPleats(site, after);
    if (ends) {
      vertices.add(outline.segments().get(last).end());
    }
    String name =
        s.arcs() > 0 && !names.get(s.first()).startsWith("side ")
            ? s.name() + " corner"
            : names.get(s.first());
    for (int j = 0; j + 1 < vertices.size(); j++) {
      boolean over = ends && j + 2 == vertices.size();
      int corner = over ? cornerAfter(last) : site;
      Fold fold = corner < 0 ? Fold.NONE : choices.get(corner).fold();
      elements.add(new Side(name, vertices.get(j), vertices.get(j + 1), true, fold, corner));
    }
  }

  private Vec2 lastVertex(int site) {
    List<Vec2> vertices = vertices(site);
    return vertices.get(vertices.size() - 1);
  }

  /** Where the pleats stand: the corners of the facets, which touch the rounding. */
  private List<Vec2> vertices(int site) {
    CornerSite s = sites.get(site);
    int n = choices.get(site).pleats();
    double start = outline.segments().get(s.first()).directionAt(0).right().angle();
    List<Vec2> vertices = new ArrayList<>();
    for (int j = 0; j < n; j++) {
      vertices.add(meet(start + j * s.turn() / n, start + (j + 1) * s.turn() / n, s));
    }
    return vertices;
  }

  private Vec2 meet(double a, double b) {
    return meet(a, b, sites.get(0));
  }

  /** Where the tangent lines with two normals meet. */
  private Vec2 meet(double a, double b, CornerSite site) {
    Vec2 na = Vec2.polar(a);
    Vec2 nb = Vec2.polar(b);
    double ha = na.dot(touch(a, site));
    double hb = nb.dot(touch(b, site));
    double det = na.cross(nb);
    return new Vec2((ha * nb.y() - hb * na.y()) / det, (hb * na.x() - ha * nb.x()) / det);
  }

  /** The point of a chain whose outward normal has this angle; a joint has those between. */
  private Vec2 touch(double angle, CornerSite site) {
    int n = outline.segments().size();
    Vec2 best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < site.arcs(); k++) {
      Segment s = outline.segments().get((site.first() + k) % n);
      double from = s.directionAt(0).right().angle();
      double into = Math.atan2(Math.sin(angle - from), Math.cos(angle - from));
      if (into < -1e-9 && s.sweep() > Math.PI) {
        into += 2 * Math.PI;
      }
      if (into >= -1e-9 && into <= s.sweep() + 1e-9) {
        return s.centre().along(Vec2.polar(angle), s.radius());
      }
      double outside = into < 0 ? -into : into - s.sweep();
      if (outside < least) {
        least = outside;
        best = into < 0 ? s.start() : s.end();
      }
    }
    return best;
  }
}
