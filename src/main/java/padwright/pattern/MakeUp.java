package padwright.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import padwright.design.Defaults;
import padwright.design.EdgeShape;
import padwright.design.PadSpec;
import padwright.design.WrappedPad;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Staple;
import padwright.material.Status;
import padwright.material.Wadding;
import padwright.measure.InputRefused;
import padwright.measure.Sentence;
import padwright.shape.LaidOver;
import padwright.shape.Stack;

/**
 * What a pad is made of: catalogue rows in place of names, thicknesses and overhangs in place of
 * gaps, and the stack they make.
 */
final class MakeUp {
  private final WrappedPad pad;
  final Board board;
  final double leastThickness;
  final List<PadSpec.FoamSpec> foam = new ArrayList<>();
  final Optional<Wadding> wadding;
  final double waddingThickness;
  final Covering covering;
  final double coverThickness;
  final Staple staple;
  final Stack stack;

  MakeUp(WrappedPad pad, Catalogue catalogue, Defaults defaults) {
    this.pad = pad;
    board =
        row(
            catalogue.board(pad.base().board()),
            Catalogue.Kind.BOARD,
            pad.base().board(),
            catalogue);
    leastThickness = defaults.leastThickness(pad.base().measured(), board, pad.base().thickness());
    double height = pad.foam().stream().mapToDouble(WrappedPad.FoamLayer::thickness).sum();
    for (int i = 0; i < pad.foam().size(); i++) {
      WrappedPad.FoamLayer layer = pad.foam().get(i);
      Foam row = row(catalogue.foam(layer.foam()), Catalogue.Kind.FOAM, layer.foam(), catalogue);
      double overhang = defaults.overhang(layer.overhang(), i, row, height, pad.base().size());
      foam.add(new PadSpec.FoamSpec(row, layer.thickness(), overhang, layer.crown(), 0));
    }
    wadding =
        pad.wadding()
            .map(
                w ->
                    row(
                        catalogue.wadding(w.wadding()),
                        Catalogue.Kind.WADDING,
                        w.wadding(),
                        catalogue));
    waddingThickness =
        wadding
            .map(
                w ->
                    defaults.waddingThickness(
                        pad.wadding().orElseThrow().thickness(), w.compressed(), w.id()))
            .orElse(0.0);
    covering =
        row(
            catalogue.covering(pad.cover().covering()),
            Catalogue.Kind.COVERING,
            pad.cover().covering(),
            catalogue);
    coverThickness = defaults.coverThickness(pad.cover().thickness(), covering);
    staple = staple(catalogue, defaults);
    stack =
        new Stack(
            pad.base().thickness(),
            pad.base().backArris(),
            foam.stream()
                .map(f -> new Stack.Layer(f.thickness(), f.overhang(), f.crown()))
                .toList(),
            pad.edge(),
            waddingThickness,
            pad.wadding().map(WrappedPad.WaddingLayer::overSides).orElse(false));
    checkStack();
    if (stack.crowned()) {
      layOver(defaults);
    }
  }

  /** Layers over a crown are cut larger by what they bend. */
  private void layOver(Defaults defaults) {
    for (int i = 0; i < foam.size(); i++) {
      PadSpec.FoamSpec f = foam.get(i);
      double more = LaidOver.extra(stack, i);
      if (more > 0) {
        foam.set(i, new PadSpec.FoamSpec(f.foam(), f.thickness(), f.overhang(), f.crown(), more));
        defaults.note(
            "foam[" + i + "]",
            mm(more) + " larger a side",
            "laid over a crown it is cut longer, measured along its middle",
            Status.OWN);
      }
    }
  }

  private Staple staple(Catalogue catalogue, Defaults defaults) {
    if (pad.staples().staple().isPresent()) {
      String id = pad.staples().staple().get();
      return row(catalogue.staple(id), Catalogue.Kind.STAPLE, id, catalogue);
    }
    Staple first = catalogue.staples().get(0);
    defaults.note("staples.staple", first.id(), "the first in the catalogue", Status.OWN);
    return first;
  }

  private <T> T row(Optional<T> row, Catalogue.Kind kind, String id, Catalogue catalogue) {
    return row.orElseThrow(
        () ->
            new InputRefused(
                "",
                0,
                "parts[" + pad.id() + "]",
                "the catalogue's " + kind.section() + " has no \"" + id + "\"",
                "Nearest: " + String.join(", ", catalogue.nearest(kind, id))));
  }

  /** Shapes that cannot be cut are refused before anything is worked out from them. */
  private void checkStack() {
    checkEdge(pad.edge(), "edge");
    for (int i = 0; i < pad.runs().size(); i++) {
      String field = "runs[" + i + "].edge";
      pad.runs().get(i).edge().ifPresent(edge -> checkEdge(edge, field));
    }
    for (int i = 0; i < foam.size(); i++) {
      refuseIf(
          foam.get(i).crown() && !(foam.get(i).overhang() < 0),
          "foam[" + i + "].overhang",
          foam.get(i).overhang(),
          "does not set the crown in",
          "Give a crown a negative overhang");
    }
    for (int i = 0; i < foam.size(); i++) {
      for (int k = i + 1; k < foam.size() && foam.get(i).crown(); k++) {
        refuseIf(
            !foam.get(k).crown() && foam.get(k).overhang() <= foam.get(i).overhang(),
            "foam[" + k + "].overhang",
            foam.get(k).overhang(),
            "does not reach over the crown below it",
            "Set the crown in further, or step this layer back less");
      }
    }
    for (int i = 0; i < pad.runs().size(); i++) {
      double least = pad.runs().get(i).overhang().orElse(Double.POSITIVE_INFINITY);
      refuseIf(
          foam.stream().anyMatch(f -> f.crown() && f.overhang() >= least),
          "runs[" + i + "].overhang",
          least,
          "does not reach over the crown",
          "Set the crown in further, or step this run back less");
    }
    PadSpec.FoamSpec last = foam.get(foam.size() - 1);
    refuseIf(
        last.crown(),
        "foam[" + (foam.size() - 1) + "].crown",
        last.thickness(),
        "of crown has no layer laid over it",
        "Leave \"crown\" out: the covering goes straight over a layer that is stepped back");
    refuseIf(
        pad.base().backArris() > pad.base().thickness() / 2,
        "base.backArris",
        pad.base().backArris(),
        "is more than half the board's thickness",
        "Make it at most " + mm(pad.base().thickness() / 2));
  }

  private void checkEdge(EdgeShape edge, String field) {
    if (edge instanceof EdgeShape.Round r) {
      checkEdge(r.radius(), field + ".round");
    } else if (edge instanceof EdgeShape.Bevel b) {
      checkEdge(b.size(), field + ".bevel");
    }
  }

  private void checkEdge(double size, String field) {
    refuseIf(
        size > stack.edgeHeight() + 1e-9,
        field,
        size,
        "is more than the foam is high" + (stack.crowned() ? " at the edge" : ""),
        "Make it at most " + mm(stack.edgeHeight()));
  }

  private void refuseIf(boolean bad, String field, double value, String problem, String remedy) {
    if (bad) {
      throw new InputRefused(
          "", 0, "parts[" + pad.id() + "]." + field, mm(value) + " " + problem, remedy);
    }
  }

  private static String mm(double v) {
    return Sentence.of("%.1f mm", v);
  }
}
