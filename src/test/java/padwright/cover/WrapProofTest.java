package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/** The wrap proof on covers that are right, and on covers spoilt on purpose. */
class WrapProofTest {
  private static Pads seat(Treatment treatment) {
    Pads pads = new Pads();
    pads.outline = Pads.rectangle(400, 300);
    pads.treatments = List.of(treatment);
    return pads;
  }

  private static WrapReport check(PartResult part, List<Vec2> cut) {
    return WrapProof.check(cut, part.cover().skeleton(), part.spec().turnUnder(), 0);
  }

  private static List<Vec2> trim(PartResult part) {
    return part.cover().trim().flattened(0.01);
  }

  @Test
  void everyTreatmentOfASquareCornerIsProved() {
    for (Treatment t :
        List.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT, Treatment.MITRED_END)) {
      WrapReport report = seat(t).run().wrap();
      assertThat(report.failures()).as(t.name()).isEmpty();
      assertThat(report.leastTurnUnder()).isCloseTo(20, within(1e-6));
    }
  }

  @Test
  void aReliefStopOfSevenFailsOnHiding() {
    Pads pads = seat(Treatment.SINGLE_PLEAT);
    pads.reliefStop = OptionalDouble.of(7);
    WrapReport report = pads.run().wrap();
    assertThat(report.proved()).isFalse();
    assertThat(report.leastHiding()).isCloseTo(7, within(0.01));
    assertThat(report.bareArea()).isZero();
    pads.reliefStop = OptionalDouble.of(8);
    assertThat(pads.run().wrap().proved()).isTrue();
  }

  @Test
  void aReliefStopOfSevenIsAStopFinding() {
    Pads pads = seat(Treatment.SINGLE_PLEAT);
    pads.reliefStop = OptionalDouble.of(7);
    assertThat(pads.run().findings())
        .anySatisfy(
            f -> {
              assertThat(f.rule()).isEqualTo("wrap-raw-edge");
              assertThat(f.value().orElseThrow()).isCloseTo(7, within(0.01));
              assertThat(f.limit().orElseThrow()).isEqualTo(8);
            });
  }

  @Test
  void aCutFivePastTheFoldLeavesBareArea() {
    PartResult part = seat(Treatment.SINGLE_PLEAT).run();
    List<Vec2> cut = new ArrayList<>();
    // A relief cut at the front right corner that runs 5 mm into the front's strip.
    double fold = 200.5 - 5;
    List<Vec2> whole = trim(part);
    for (Vec2 p : whole) {
      boolean corner = p.x() > 195 && p.y() < -149;
      cut.add(corner && p.x() < 230 ? new Vec2(Math.min(p.x(), fold), p.y()) : p);
    }
    WrapReport report = check(part, cut);
    assertThat(report.proved()).isFalse();
    // 5 mm wide; at least down the part of the wall beside the relief cut.
    assertThat(report.bareArea()).isGreaterThan(5 * 15);
    assertThat(report.failures()).anyMatch(f -> f.contains("bare"));
  }

  @Test
  void aBlankTenLessOverallFailsOnTheTurnUnder() {
    PartResult part = seat(Treatment.SINGLE_PLEAT).run();
    double x = part.cover().trim().bounds().width() / 2 - 5;
    double y = part.cover().trim().bounds().height() / 2 - 5;
    List<Vec2> smaller =
        List.of(new Vec2(-x, -y), new Vec2(x, -y), new Vec2(x, y), new Vec2(-x, y));
    List<Vec2> cut = Polygons.inside(trim(part), smaller);
    WrapReport report = check(part, cut);
    assertThat(report.leastTurnUnder()).isCloseTo(15, within(0.01));
    assertThat(report.failures()).anyMatch(f -> f.contains("turn-under"));
  }

  @Test
  void aRoundCoverTenLessOverallFailsOnTheTurnUnderToo() {
    for (String covering : List.of("knit-backed-vinyl", "knit-fabric")) {
      Pads pads = new Pads();
      pads.outline = new OutlineShape.Circle(600);
      pads.covering = covering;
      pads.foam = List.of(Pads.layer(10, 0));
      PartResult part = pads.run();
      assertThat(part.wrap().proved()).as(covering + part.wrap()).isTrue();
      double full = part.cover().trim().bounds().width() / 2;
      double k = (full - 5) / full;
      List<Vec2> smaller = trim(part).stream().map(p -> p.times(k)).toList();
      assertThat(check(part, smaller).failures())
          .as(covering)
          .anyMatch(f -> f.contains("turn-under"));
      List<Vec2> shifted = trim(part).stream().map(p -> p.plus(new Vec2(6, 0))).toList();
      assertThat(check(part, shifted).proved()).as(covering).isFalse();
    }
  }

  @Test
  void aHoleInTheFaceIsBare() {
    PartResult part = seat(Treatment.SINGLE_PLEAT).run();
    List<Vec2> cut = new ArrayList<>(trim(part));
    // A slash from the middle of one side right into the face.
    for (int i = 0; i < cut.size(); i++) {
      Vec2 a = cut.get(i);
      Vec2 b = cut.get((i + 1) % cut.size());
      if (a.distance(b) > 350) {
        Vec2 m = a.midpoint(b);
        cut.addAll(i + 1, List.of(m, m.times(0.3), m.plus(new Vec2(4, 0))));
        break;
      }
    }
    assertThat(check(part, cut).bareArea()).isGreaterThan(50);
  }
}
