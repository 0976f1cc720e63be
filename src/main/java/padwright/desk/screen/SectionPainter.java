package padwright.desk.screen;

import javafx.scene.canvas.Canvas;
import javafx.scene.text.TextAlignment;
import padwright.desk.view.SectionForm;
import padwright.desk.view.SectionForm.Dimension;
import padwright.desk.view.SectionForm.Handle;
import padwright.desk.view.SectionForm.Kind;
import padwright.desk.view.SectionForm.Label;
import padwright.desk.view.SectionForm.Line;
import padwright.desk.view.SectionForm.Member;
import padwright.geometry.Bounds;
import padwright.geometry.Vec2;

/** Paints a section form; the fields themselves stand on top of it. */
final class SectionPainter {
  private final SectionForm form;
  private final FormColours colours;
  private final FormBrush brush;
  private final String selected;
  private final String pointed;

  private SectionPainter(
      Canvas canvas, SectionForm form, FormColours colours, String selected, String pointed) {
    this.form = form;
    this.colours = colours;
    this.brush = new FormBrush(canvas.getGraphicsContext2D(), colours, form.text());
    this.selected = selected;
    this.pointed = pointed;
  }

  /**
   * @param selected member that is chosen
   * @param pointed member or field's place under the pointer; empty for none
   */
  static void paint(
      Canvas canvas, SectionForm form, FormColours colours, String selected, String pointed) {
    new SectionPainter(canvas, form, colours, selected, pointed).paint();
  }

  private boolean chosen(String member) {
    return member.equals(selected) || member.equals(pointed);
  }

  private void paint() {
    brush.clear(form.width(), form.height());
    form.members().stream().filter(m -> m.kind() != Kind.STAPLES).forEach(this::member);
    form.members().stream().filter(m -> m.kind() == Kind.STAPLES).forEach(this::member);
    Bounds all = null;
    for (Member m : form.members()) {
      if (!m.outline().isEmpty()) {
        all = all == null ? Bounds.of(m.outline()) : all.union(Bounds.of(m.outline()));
      }
    }
    if (all != null) {
      brush.torn(all.minX(), all.minY(), all.maxY());
    }
    brush.line(form.baseLine(), true);
    form.labels().forEach(this::label);
    form.dimensions().forEach(this::dimension);
    for (Handle h : form.handles()) {
      boolean taken = h.place().equals(pointed);
      brush.dot(h.at(), taken ? 4.5 : chosen(h.member()) ? 3.2 : 2);
    }
    foot();
  }

  private void member(Member m) {
    if (m.closed()) {
      brush.area(m.kind(), m.number(), m.outline(), chosen(m.name()));
    } else if (m.kind() == Kind.COVER) {
      double rim = chosen(m.name()) ? 4 : 1.2;
      brush.band(m.outline(), m.thick() + rim, chosen(m.name()) ? colours.accent() : colours.ink());
      brush.band(m.outline(), m.thick(), colours.tone(Kind.COVER, 0));
    } else {
      brush.outline(m.outline(), false, chosen(m.name()) ? 4 : 1.6);
    }
  }

  private void label(Label l) {
    boolean head = l.member().isEmpty();
    boolean heavy = !head && chosen(l.member());
    if (!head) {
      brush.line(l.leader(), false);
      brush.line(
          new Line(l.leader().to(), l.leader().to().plus(new Vec2(3, 0))), false, colours.ink(), 3);
    }
    brush.words(
        l.words(),
        l.box(),
        head ? TextAlignment.LEFT : TextAlignment.RIGHT,
        heavy,
        head ? colours.faint() : heavy ? colours.accent() : colours.ink());
  }

  private void dimension(Dimension d) {
    boolean heavy = !d.member().isEmpty() && chosen(d.member());
    d.witnesses().forEach(w -> brush.line(w, false));
    brush.bar(d.from(), d.to(), heavy);
    d.caption()
        .ifPresent(
            b ->
                brush.words(
                    d.label(),
                    b,
                    TextAlignment.LEFT,
                    heavy,
                    heavy ? colours.accent() : colours.ink()));
    d.reading().ifPresent(r -> brush.words(r, d.box(), TextAlignment.LEFT, true, colours.ink()));
  }

  private void foot() {
    Label bar = form.scaleBar();
    brush.bar(bar.leader().from(), bar.leader().to(), false);
    brush.words(bar.words(), bar.box(), TextAlignment.LEFT, false, colours.ink());
    Bounds words = new Bounds(6, bar.box().minY(), bar.leader().from().x() - 12, bar.box().maxY());
    brush.words(form.caption(), words, TextAlignment.LEFT, false, colours.ink());
  }
}
