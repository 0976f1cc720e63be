package padwright.pattern;

import org.junit.jupiter.api.Test;
import padwright.design.*;
import padwright.design.WrappedPad.*;

class ScratchTest {
  static void show(String n, PartResult r) {
    System.out.println("== " + n);
    System.out.println(r.figures());
    System.out.println(r.wrap());
    for (var c : r.cover().corners())
      System.out.println(
          c.name()
              + " "
              + c.treatment()
              + " over="
              + c.over()
              + " "
              + c.reason()
              + " layers "
              + c.layersFirst()
              + "/"
              + c.layersSecond()
              + " strain "
              + c.flapStrain()
              + " pleats "
              + c.pleats()
              + " depth "
              + c.pleatDepth()
              + " ease "
              + c.easeNeeded());
    var h = new java.util.TreeMap<Integer, Integer>();
    r.staples().positions().forEach(p -> h.merge(p.layers(), 1, Integer::sum));
    System.out.println("layers hist " + h + " gap " + r.staples().largestGap());
    r.findings().forEach(f -> System.out.println(f.level() + " " + f.rule() + " " + f.message()));
  }

  @Test
  void t() {
    Pads p = new Pads();
    show("rest", p.run());
    System.out.println(p.run().cover().trim().segments());
    p.edge = new EdgeShape.Round(6);
    show("rest round", p.run());
    p = new Pads();
    p.outline = Pads.rectangle(400, 300);
    show("single", p.run());
    p.reliefStop = java.util.OptionalDouble.of(7);
    System.out.println(p.run().wrap());
    p = new Pads();
    p.outline = Pads.rectangle(400, 300);
    p.treatments = java.util.List.of(Treatment.DOUBLE_PLEAT);
    show("double", p.run());
    p = new Pads();
    p.outline = new OutlineShape.Trapezoid(400, 300, 350);
    p.foam = java.util.List.of(Pads.layer(40, 6));
    show("trap", p.run());
    p = new Pads();
    p.outline = new OutlineShape.Circle(350);
    show("circle", p.run());
    p = new Pads();
    p.outline = new OutlineShape.Ellipse(450, 300);
    show("ellipse", p.run());
    p = new Pads();
    p.outline = Pads.rectangle(400, 300, 40);
    show("rr40", p.run());
    p = new Pads();
    p.outline = Pads.rectangle(400, 300, 6);
    show("rr6", p.run());
    p = new Pads();
    p.outline = Pads.rectangle(400, 300, 60);
    p.covering = "knit-fabric";
    p.foam = java.util.List.of(Pads.layer(5, 0));
    p.thickness = 6.5;
    show("rr60 knit", p.run());
  }
}
