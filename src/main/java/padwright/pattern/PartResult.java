package padwright.pattern;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import padwright.cover.CornerPlan;
import padwright.cover.CoverPlan;
import padwright.cover.WrapReport;
import padwright.design.Finding;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.dome.DomeReport;
import padwright.fastening.Mounting;
import padwright.fastening.StaplePlan;
import padwright.geometry.Vec2;
import padwright.shape.PadShape;

/**
 * Everything the program works out for one part.
 *
 * @param asked what the maker wrote
 * @param spec the same with every gap filled
 * @param dome what a domed top asks of the covering; empty where the top is flat
 */
public record PartResult(
    WrappedPad asked,
    PadSpec spec,
    PadShape shape,
    CoverPlan cover,
    WrapReport wrap,
    StaplePlan staples,
    Mounting mounting,
    Figures figures,
    List<PatternPiece> pieces,
    List<Finding> findings,
    Optional<DomeReport> dome) {
  public PartResult {
    pieces = List.copyOf(pieces);
    findings = List.copyOf(findings);
  }

  public boolean stopped() {
    return findings.stream().anyMatch(f -> f.level() == Finding.Level.STOP);
  }

  /** Most layers of covering under the staples that are nearer to this corner than to another. */
  public int layersAt(CornerPlan corner) {
    return staples.positions().stream()
        .filter(p -> nearest(p.at()).equals(corner))
        .mapToInt(StaplePlan.Position::layers)
        .max()
        .orElse(1);
  }

  private CornerPlan nearest(Vec2 place) {
    return cover.corners().stream()
        .min(Comparator.comparingDouble(c -> c.apex().distance(place)))
        .orElseThrow();
  }

  public Optional<PatternPiece> piece(PatternPiece.Kind kind) {
    return pieces.stream().filter(p -> p.kind() == kind).findFirst();
  }
}
