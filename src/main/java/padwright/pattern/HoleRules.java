package padwright.pattern;

import static padwright.design.Finding.Level.STOP;

import java.util.ArrayList;
import java.util.List;
import padwright.design.Finding;
import padwright.design.WrappedPad.Hole;
import padwright.geometry.Path;
import padwright.geometry.PathGap;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;

/** Holes that are bored through the base lie on it, and not over each other. */
final class HoleRules {
  private HoleRules() {}

  static List<Finding> of(List<Hole> holes, PadShape shape) {
    List<Finding> findings = new ArrayList<>();
    List<Path> paths = holes.stream().map(HoleRules::path).toList();
    for (int i = 0; i < paths.size(); i++) {
      double edge = PathGap.inside(paths.get(i), shape.outline());
      if (edge <= 0) {
        findings.add(
            Finding.of(
                "hole-outside",
                STOP,
                FindingRules.text("Hole %d reaches %.1f beyond the base's edge.", i + 1, -edge),
                edge,
                0,
                "mm",
                "geometry of the base",
                "Move it in, make it smaller, or give the outline that shape"));
      }
      for (int j = i + 1; j < paths.size(); j++) {
        double gap =
            at(holes.get(i)).distance(at(holes.get(j)))
                - (holes.get(i).diameter() + holes.get(j).diameter()) / 2;
        if (gap <= 0) {
          findings.add(
              Finding.of(
                  "hole-overlap",
                  STOP,
                  FindingRules.text("Hole %d and hole %d overlap by %.1f.", i + 1, j + 1, -gap),
                  gap,
                  0,
                  "mm",
                  "geometry of the base",
                  "Move them apart, or make one cut-out of them"));
        }
      }
    }
    return findings;
  }

  private static Vec2 at(Hole h) {
    return new Vec2(h.x(), h.y());
  }

  private static Path path(Hole h) {
    return Path.circle(at(h), h.diameter() / 2);
  }
}
