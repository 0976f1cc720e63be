package padwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Paper;
import padwright.material.Screw;
import padwright.material.Sourced;
import padwright.material.Staple;
import padwright.material.Wadding;
import padwright.measure.Sentence;
import padwright.output.Sentences;
import padwright.output.Table;

/** The catalogue as tables, lengths in mm; every row with where it comes from. */
final class CatalogueText {
  private static final String INDENT = "  ";

  private CatalogueText() {}

  static CharSequence of(Catalogue rows, List<Catalogue.Kind> kinds) {
    StringBuilder out = new StringBuilder();
    for (Catalogue.Kind kind : kinds) {
      out.append(out.length() > 0 ? "\n" : "");
      String name = kind.section();
      out.append(name.substring(0, 1).toUpperCase(Locale.ROOT)).append(name.substring(1));
      out.append(" (lengths in mm)\n");
      switch (kind) {
        case BOARD -> boards(out, rows.boards());
        case FOAM -> foams(out, rows.foams());
        case WADDING -> waddings(out, rows.waddings());
        case COVERING -> coverings(out, rows.coverings());
        case STAPLE -> staples(out, rows.staples());
        case SCREW -> screws(out, rows.screws());
        case PAPER -> papers(out, rows.papers());
      }
    }
    return out;
  }

  private static void boards(StringBuilder out, List<Board> rows) {
    Table t = new Table(INDENT, "llrrrl");
    t.row("name", "", "nominal", "lower", "upper", "kg/m3");
    for (Board b : rows) {
      String id = b.id();
      String name = b.name();
      String density = number(b.density());
      for (Board.Thickness n : b.thicknesses()) {
        t.row(id, name, number(n.nominal()), number(n.lower()), number(n.upper()), density);
        id = "";
        name = "";
        density = "";
      }
      if (!id.isEmpty()) {
        t.row(id, name, "any", "", "", density);
      }
    }
    out.append(t);
    sources(out, rows.stream().map(b -> new Named(b.id(), b.origin())).toList());
  }

  private static void foams(StringBuilder out, List<Foam> rows) {
    Table t = new Table(INDENT, "llrrll");
    t.row("name", "", "kg/m3", "hardness N", "edge", "sheets");
    for (Foam f : rows) {
      t.row(
          f.id(),
          f.name(),
          number(f.density()),
          number(f.hardness()),
          f.firm() ? "firm" : "soft",
          list(f.sheets()));
    }
    out.append(t);
    sources(out, rows.stream().map(f -> new Named(f.id(), f.origin())).toList());
  }

  private static void waddings(StringBuilder out, List<Wadding> rows) {
    Table t = new Table(INDENT, "llrrrr");
    t.row("name", "", "loose", "compressed", "g/m2", "roll");
    for (Wadding w : rows) {
      t.row(
          w.id(),
          w.name(),
          number(w.loose()),
          number(w.compressed()),
          number(w.areaWeight()),
          number(w.rollWidth()));
    }
    out.append(t);
    sources(out, rows.stream().map(w -> new Named(w.id(), w.origin())).toList());
  }

  private static void coverings(StringBuilder out, List<Covering> rows) {
    Table t = new Table(INDENT, "lllrrrrrrl");
    t.row("name", "", "kind", "thick", "g/m2", "roll", "along %", "across %", "ease %", "");
    for (Covering c : rows) {
      String marks =
          (c.nap() ? "nap " : "")
              + (c.breathes() ? "" : "airtight ")
              + (c.twoFaced() ? "two-faced" : "");
      t.row(
          c.id(),
          c.name(),
          c.family().name().toLowerCase(Locale.ROOT),
          number(c.thickness()),
          number(c.areaWeight()),
          number(c.rollWidth()),
          percent(c.stretchAlong()),
          percent(c.stretchAcross()),
          percent(c.ease()),
          marks.strip());
    }
    out.append(t);
    sources(out, rows.stream().map(c -> new Named(c.id(), c.origin())).toList());
  }

  private static void staples(StringBuilder out, List<Staple> rows) {
    Table t = new Table(INDENT, "llrrl");
    t.row("name", "", "wire", "crown", "legs");
    for (Staple s : rows) {
      String wire = number(s.wireWidth()) + " x " + number(s.wireThickness());
      t.row(s.id(), s.name(), wire, number(s.crown()), list(s.legs()));
    }
    out.append(t);
    sources(out, rows.stream().map(s -> new Named(s.id(), s.origin())).toList());
  }

  private static void screws(StringBuilder out, List<Screw> rows) {
    Table t = new Table(INDENT, "llrrrl");
    t.row("name", "", "shank", "head", "edge", "lengths");
    for (Screw s : rows) {
      t.row(
          s.id(),
          s.name(),
          number(s.shank()),
          number(s.head()),
          number(s.edgeDistance()),
          list(s.lengths()));
    }
    out.append(t);
    sources(out, rows.stream().map(s -> new Named(s.id(), s.origin())).toList());
  }

  private static void papers(StringBuilder out, List<Paper> rows) {
    Table t = new Table(INDENT, "llrr");
    t.row("name", "", "width", "height");
    for (Paper p : rows) {
      t.row(p.id(), p.name(), number(p.width()), p.isRoll() ? "roll" : number(p.height()));
    }
    out.append(t);
    sources(out, rows.stream().map(p -> new Named(p.id(), p.origin())).toList());
  }

  private record Named(String id, Sourced origin) {}

  private static void sources(StringBuilder out, List<Named> rows) {
    out.append("\n  Where they come from\n");
    int width = rows.stream().mapToInt(n -> n.id().length()).max().orElse(0) + 2;
    for (Named n : rows) {
      String text = Sentences.closed(n.origin().source());
      String status = Sentences.status(n.origin().status());
      out.append(Sentences.block(INDENT, n.id(), width, text + " (" + status + ")"));
    }
  }

  private static String list(List<Double> numbers) {
    return numbers.stream().map(CatalogueText::number).collect(Collectors.joining(", "));
  }

  /** To a hundredth: finer than a caliper in a workshop. */
  private static String number(double value) {
    return Sentence.plain(Math.round(value * 100) / 100.0);
  }

  private static String percent(double share) {
    return Sentence.plain(Math.round(share * 1000) / 10.0);
  }
}
