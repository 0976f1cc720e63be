package padwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Covering;
import padwright.material.Foam;
import padwright.material.Paper;
import padwright.material.Screw;
import padwright.material.Sourced;
import padwright.material.Staple;
import padwright.material.Wadding;

/** The catalogue in the form of a catalogue file, so that a maker's own can be started from it. */
final class CatalogueJson {
  private final JsonOut out;

  private CatalogueJson(JsonOut out) {
    this.out = out;
  }

  static CharSequence of(Catalogue rows, List<Catalogue.Kind> kinds) throws IOException {
    StringBuilder text = new StringBuilder();
    try (JsonOut out = new JsonOut(text)) {
      out.object(null).text("format", "padwright-catalogue").count("version", 1);
      out.text("units", "mm");
      CatalogueJson json = new CatalogueJson(out);
      for (Catalogue.Kind kind : kinds) {
        out.array(kind.section());
        json.section(rows, kind);
        out.end();
      }
      out.end();
    }
    return text;
  }

  private void section(Catalogue rows, Catalogue.Kind kind) throws IOException {
    switch (kind) {
      case BOARD -> {
        for (Board b : rows.boards()) {
          board(b);
        }
      }
      case FOAM -> {
        for (Foam f : rows.foams()) {
          start(f.id(), f.name());
          out.number("density", f.density()).number("hardness", f.hardness());
          out.flag("firm", f.firm());
          list("sheets", f.sheets());
          finish(f.origin());
        }
      }
      case WADDING -> {
        for (Wadding w : rows.waddings()) {
          start(w.id(), w.name());
          out.number("loose", w.loose()).number("compressed", w.compressed());
          out.number("areaWeight", w.areaWeight()).number("rollWidth", w.rollWidth());
          finish(w.origin());
        }
      }
      case COVERING -> {
        for (Covering c : rows.coverings()) {
          covering(c);
        }
      }
      case STAPLE -> {
        for (Staple s : rows.staples()) {
          start(s.id(), s.name());
          out.number("wireWidth", s.wireWidth()).number("wireThickness", s.wireThickness());
          out.number("crown", s.crown());
          list("legs", s.legs());
          finish(s.origin());
        }
      }
      case SCREW -> {
        for (Screw s : rows.screws()) {
          start(s.id(), s.name());
          out.number("shank", s.shank()).number("head", s.head());
          list("lengths", s.lengths());
          out.number("edgeDistance", s.edgeDistance());
          finish(s.origin());
        }
      }
      case PAPER -> {
        for (Paper p : rows.papers()) {
          start(p.id(), p.name());
          out.number("width", p.width());
          if (!p.isRoll()) {
            out.number("height", p.height());
          }
          finish(p.origin());
        }
      }
    }
  }

  private void board(Board b) throws IOException {
    start(b.id(), b.name());
    out.array("thicknesses");
    for (Board.Thickness t : b.thicknesses()) {
      out.object(null).number("nominal", t.nominal());
      out.number("lower", t.lower()).number("upper", t.upper());
      finish(t.origin());
    }
    out.end();
    out.object("lowerTolerance").number("fixed", b.toleranceFixed());
    out.number("perMm", b.tolerancePerMm()).end();
    out.number("density", b.density()).number("specificGravity", b.specificGravity());
    out.flag("pressedFibre", b.pressedFibre());
    finish(b.origin());
  }

  private void covering(Covering c) throws IOException {
    start(c.id(), c.name());
    out.text("family", c.family().name().toLowerCase(Locale.ROOT));
    out.number("thickness", c.thickness()).number("areaWeight", c.areaWeight());
    out.number("rollWidth", c.rollWidth());
    out.number("stretchAlong", c.stretchAlong()).number("stretchAcross", c.stretchAcross());
    out.number("ease", c.ease()).flag("nap", c.nap());
    out.flag("breathes", c.breathes()).flag("twoFaced", c.twoFaced());
    finish(c.origin());
  }

  private void start(String id, String name) throws IOException {
    out.object(null).text("id", id).text("name", name);
  }

  private void finish(Sourced origin) throws IOException {
    out.text("source", origin.source());
    out.text("status", origin.status().name().toLowerCase(Locale.ROOT)).end();
  }

  private void list(String name, List<Double> numbers) throws IOException {
    out.array(name);
    for (double n : numbers) {
      out.number(null, n);
    }
    out.end();
  }
}
