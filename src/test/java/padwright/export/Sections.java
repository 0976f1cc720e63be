package padwright.export;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import padwright.design.EdgeShape;
import padwright.design.PadSpec;
import padwright.material.Board;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Sourced;
import padwright.material.Staple;
import padwright.material.Status;
import padwright.material.Wadding;
import padwright.shape.Section;
import padwright.shape.SectionBuilder;
import padwright.shape.Stack;

/** Make-ups for the tests of section drawings; materials made up here. */
final class Sections {
  private static final Sourced OWN = new Sourced("made up for a test", Status.OWN);

  private Sections() {}

  static PadSpec spec(
      double board,
      List<Stack.Layer> foam,
      EdgeShape edge,
      double wadding,
      double cover,
      double w) {
    Foam firm = new Foam("firm", "firm foam", 40, 200, true, List.of(12.0), OWN);
    return new PadSpec(
        new Board("ply", "birch plywood", List.of(), 0.4, 0.03, 680, 0.6, false, OWN),
        board,
        board - 0.5,
        false,
        0,
        foam.stream().map(l -> new PadSpec.FoamSpec(firm, l.thickness(), l.overhang())).toList(),
        wadding > 0
            ? Optional.of(new Wadding("w", "polyester wadding", 20, wadding, 200, 1500, OWN))
            : Optional.empty(),
        wadding,
        false,
        edge,
        new Covering(
            "vinyl",
            "knit-backed vinyl",
            Covering.Family.COATED,
            cover,
            600,
            1370,
            0.05,
            0.05,
            0.05,
            false,
            false,
            false,
            OWN),
        cover,
        w,
        15,
        0,
        0,
        false,
        12,
        8,
        new Staple("fine", "fine wire", 0.9, 0.7, 11.2, List.of(8.0), OWN),
        25,
        8,
        50,
        OptionalDouble.empty(),
        0,
        6,
        12,
        List.of());
  }

  static Section section(PadSpec s) {
    Stack stack =
        new Stack(
            s.boardThickness(),
            s.backArris(),
            s.foam().stream().map(f -> new Stack.Layer(f.thickness(), f.overhang())).toList(),
            s.edge(),
            s.waddingThickness(),
            s.waddingOverSides());
    return SectionBuilder.build(
        stack,
        s.foam().stream().map(f -> f.foam().name()).toList(),
        s.board().name(),
        s.wadding().map(Wadding::name).orElse(""),
        s.coverThickness(),
        s.turnUnder());
  }

  /** The rest of the desk edge: 12 board, 12 + 12 foam, leg 8 through one layer of 1.0. */
  static Drawing rest(EdgeShape edge, double overhang, double wadding) {
    PadSpec s =
        spec(
            12,
            List.of(new Stack.Layer(12, 0), new Stack.Layer(12, overhang)),
            edge,
            wadding,
            1.0,
            20);
    return SectionDrawing.of(
        Pieces.HEADER, section(s), "", s, new SectionDrawing.Facts(37 + wadding, 1.0, 8, 7.0, 4.5));
  }
}
