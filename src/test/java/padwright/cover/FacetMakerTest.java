package padwright.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import padwright.design.EdgeShape;
import padwright.design.OutlineShape;
import padwright.design.WrappedPad.Treatment;
import padwright.geometry.Polygons;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.Pads;
import padwright.pattern.PartResult;

/**
 * The facets tile the trimmed cover, keep lengths where they say so, and meet along their edges.
 */
class FacetMakerTest {
  private static List<Facet> facets(PartResult part) {
    return FacetMaker.of(part.cover().trim().flattened(0.01), part.cover().skeleton());
  }

  private static Pads pads(OutlineShape outline, Treatment treatment, EdgeShape edge) {
    Pads pads = new Pads();
    pads.outline = outline;
    pads.treatments = List.of(treatment);
    pads.edge = edge;
    return pads;
  }

  private static final List<Pads> SHAPES =
      List.of(
          pads(Pads.rectangle(600, 60), Treatment.AUTO, new EdgeShape.Square()),
          pads(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, new EdgeShape.Square()),
          pads(Pads.rectangle(400, 300), Treatment.DOUBLE_PLEAT, new EdgeShape.Square()),
          pads(Pads.rectangle(400, 300), Treatment.SINGLE_PLEAT, new EdgeShape.Round(12)),
          pads(new OutlineShape.Trapezoid(400, 360, 350), Treatment.AUTO, new EdgeShape.Square()),
          pads(new OutlineShape.Circle(350), Treatment.PLEATS, new EdgeShape.Square()));

  @Test
  void together() {
    for (Pads pads : SHAPES) {
      PartResult part = pads.run();
      List<Vec2> trim = part.cover().trim().flattened(0.01);
      double sum = facets(part).stream().mapToDouble(f -> Polygons.signedArea(f.polygon())).sum();
      assertThat(sum)
          .as(pads.outline.toString())
          .isCloseTo(Polygons.signedArea(trim), within(Polygons.signedArea(trim) * 2e-4));
    }
  }

  @Test
  void anExactFacetKeepsTheLengthsOfItsPolygonOnAPlane() {
    for (Pads pads : SHAPES) {
      for (Facet f : facets(pads.run())) {
        if (!(f.surface() instanceof Facet.Plane) || !f.surface().exact()) {
          continue;
        }
        for (int i = 0; i < f.polygon().size(); i++) {
          Vec2 a = f.polygon().get(i);
          Vec2 b = f.polygon().get((i + 1) % f.polygon().size());
          assertThat(f.surface().at(a).distance(f.surface().at(b)))
              .as(f.name())
              .isCloseTo(a.distance(b), within(1e-9));
        }
      }
    }
  }

  @Test
  void neighboursOnTheFlatMeetInSpaceAboveTheBack() {
    for (Pads pads : SHAPES) {
      PartResult part = pads.run();
      List<Facet> facets = facets(part);
      int shared = 0;
      for (Facet f : facets) {
        for (Facet g : facets) {
          if (f == g || !f.surface().exact() || !g.surface().exact()) {
            continue;
          }
          for (Vec2 p : f.polygon()) {
            for (Vec2 q : g.polygon()) {
              Vec3 there = f.surface().at(p);
              // On the back the turn-unders of two sides part on purpose.
              if (p.distance(q) < 1e-9 && there.z() > 0.1) {
                assertThat(there.distance(g.surface().at(q)))
                    .as(f.name() + " and " + g.name() + " at " + p)
                    .isLessThan(1.0);
                shared++;
              }
            }
          }
        }
      }
      assertThat(shared).as(pads.outline.toString()).isGreaterThan(20);
    }
  }

  @Test
  void aFlapThatAWallsBendStrainsStillMeetsItsNeighbours() {
    for (Treatment treatment : List.of(Treatment.SINGLE_PLEAT, Treatment.DOUBLE_PLEAT)) {
      for (double overhang : new double[] {-20, 0, 20}) {
        Pads pads = pads(Pads.rectangle(400, 300), treatment, new EdgeShape.Bevel(10));
        pads.foam = List.of(Pads.layer(40, overhang));
        int shared = 0;
        List<Facet> facets = facets(pads.run());
        for (Facet f : facets) {
          for (Facet g : facets) {
            for (Vec2 p : f.polygon()) {
              for (Vec2 q : g.polygon()) {
                Vec3 there = f.surface().at(p);
                // The two halves of a double pleat come together on the arris of a straight wall
                // only: along their bisector they part by what the bend strains them.
                boolean halves = f.name().endsWith(" far") && g.name().endsWith(" far");
                if (f != g && !halves && p.distance(q) < 1e-9 && there.z() > 0.6) {
                  assertThat(there.distance(g.surface().at(q)))
                      .as(treatment + " " + overhang + ": " + f.name() + ", " + g.name() + ", " + p)
                      .isLessThan(0.5);
                  shared++;
                }
              }
            }
          }
        }
        assertThat(shared).isGreaterThan(20);
      }
    }
  }

  @Test
  void theSideLiesOnTheWallAndTheTurnUnderOnTheBack() {
    PartResult part = SHAPES.get(1).run();
    for (Facet f : facets(part)) {
      if (f.name().equals("front wall")) {
        for (Vec2 p : f.polygon()) {
          assertThat(f.surface().at(p).y()).isCloseTo(-150.5, within(1e-9));
        }
      }
      if (f.name().equals("front back")) {
        for (Vec2 p : f.polygon()) {
          assertThat(f.surface().at(p).z()).isCloseTo(-0.5, within(1e-9));
          assertThat(f.surface().at(p).y()).isBetween(-150.001, -129.999);
        }
      }
    }
  }
}
