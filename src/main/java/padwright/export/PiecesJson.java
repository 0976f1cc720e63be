package padwright.export;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import padwright.cover.CornerPlan;
import padwright.cover.Facet;
import padwright.cover.FacetMaker;
import padwright.design.Job;
import padwright.geometry.Path;
import padwright.geometry.Segment;
import padwright.geometry.Vec2;
import padwright.geometry.Vec3;
import padwright.pattern.PartResult;
import padwright.pattern.PatternPiece;
import padwright.pattern.PatternSet;
import padwright.shape.EdgeSections;
import padwright.shape.Passage;
import padwright.shape.Section;

/**
 * Writes every piece as numbers, so that another program can check the wrap: cut lines and fold
 * lines as points with the bulge of the segment that follows, staples, and the cover's facets with
 * their places in space. mm, in the frame of the base outline seen from the face. The form is
 * described in {@code docs/pieces.md}.
 */
public final class PiecesJson implements Closeable {
  /** How far chords may leave an arc in a facet's polygon, mm. */
  private static final double CHORD_ERROR = 0.01;

  private final JsonGenerator json;

  /**
   * Begins a document; parts are {@linkplain #add added} one after another, so that a large job
   * need not be held whole.
   *
   * @param out is flushed, not closed
   */
  public PiecesJson(Job job, Writer out) throws IOException {
    json = JsonFactory.builder().build().createGenerator(out);
    json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    json.writeStartObject();
    json.writeStringField("format", "padwright-pieces");
    json.writeNumberField("version", 1);
    json.writeStringField("units", "mm");
    json.writeStringField("frame", "base outline seen from the face; x right, y up, z to the face");
    json.writeStringField("title", job.title());
    json.writeArrayFieldStart("parts");
  }

  /** Writes the whole set; the writer is flushed, not closed. */
  public static void write(PatternSet set, Writer out) throws IOException {
    try (PiecesJson writer = new PiecesJson(set.job(), out)) {
      for (PartResult part : set.parts()) {
        writer.add(part);
      }
    }
  }

  /** Ends the document, also one that was broken off. */
  @Override
  public void close() throws IOException {
    json.close();
  }

  /** Writes one part. */
  public void add(PartResult part) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", part.asked().id());
    json.writeStringField("name", part.asked().name());
    json.writeNumberField("coverThickness", part.spec().coverThickness());
    json.writeNumberField("turnUnder", part.spec().turnUnder());
    json.writeNumberField("stretchX", part.spec().stretchX());
    json.writeNumberField("stretchY", part.spec().stretchY());
    path("outline", part.shape().outline());
    json.writeObjectFieldStart("section");
    json.writeStringField("frame", "x out from the base outline, y up from the board's back");
    section(part.shape().section());
    EdgeSections sections = part.shape().sections();
    json.writeObjectFieldStart("sectionBySide");
    for (Map.Entry<String, Section> side : new TreeMap<>(sections.special()).entrySet()) {
      if (!sections.passages().containsKey(side.getKey())) {
        json.writeObjectFieldStart(side.getKey());
        section(side.getValue());
      }
    }
    json.writeEndObject();
    json.writeObjectFieldStart("passages");
    for (Map.Entry<String, Passage> side : new TreeMap<>(sections.passages()).entrySet()) {
      json.writeObjectFieldStart(side.getKey());
      json.writeNumberField("length", side.getValue().length());
      json.writeObjectFieldStart("start");
      section(side.getValue().start());
      json.writeObjectFieldStart("end");
      section(side.getValue().end());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeArrayFieldStart("pieces");
    for (PatternPiece piece : part.pieces()) {
      piece(part, piece);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void section(Section section) throws IOException {
    path("hull", section.taut().hull());
    path("neutral", section.taut().neutral());
    json.writeNumberField("startX", section.taut().startX());
    json.writeNumberField("backStart", section.taut().backStart());
    json.writeEndObject();
  }

  private void piece(PartResult part, PatternPiece piece) throws IOException {
    json.writeRaw('\n');
    json.writeStartObject();
    json.writeStringField("id", piece.id());
    json.writeStringField("name", piece.name());
    json.writeNumberField("quantity", piece.quantity());
    json.writeNumberField("mirrored", piece.mirrored());
    json.writeStringField("material", piece.material());
    json.writeNumberField("thickness", piece.thickness());
    path("cutLine", piece.cutLine());
    json.writeArrayFieldStart("innerCuts");
    for (Path inner : piece.innerCuts()) {
      path(inner);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("lines");
    for (PatternPiece.LineMark line : piece.lines()) {
      json.writeStartObject();
      json.writeStringField("kind", Words.of(line.kind()));
      path("path", line.path());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("staples");
    for (PatternPiece.StapleMark staple : piece.staples()) {
      json.writeStartObject();
      json.writeNumberField("number", staple.number());
      json.writeNumberField("x", staple.at().x());
      json.writeNumberField("y", staple.at().y());
      json.writeNumberField("angle", staple.angle());
      json.writeNumberField("layers", staple.layers());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (piece.kind() == PatternPiece.Kind.COVER) {
      cover(part);
    }
    json.writeEndObject();
  }

  private void cover(PartResult part) throws IOException {
    path("trimLineUnstretched", part.cover().trim());
    path("cutLineUnstretched", part.cover().cut());
    json.writeArrayFieldStart("corners");
    for (CornerPlan corner : part.cover().corners()) {
      json.writeStartObject();
      json.writeStringField("name", corner.name());
      json.writeStringField("treatment", Words.of(corner.treatment()));
      json.writeStringField("over", corner.over());
      json.writeNumberField("turn", corner.turn());
      json.writeNumberField("count", corner.pleats());
      json.writeNumberField("spacing", corner.row().spacing());
      json.writeNumberField("mouth", corner.row().mouth());
      json.writeNumberField("stop", corner.row().stop());
      json.writeArrayFieldStart("folds");
      for (CornerPlan.Fold fold : corner.folds()) {
        json.writeStartObject();
        json.writeStringField("sense", Words.of(fold.sense()));
        path("path", fold.line());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("facets");
    List<Facet> facets =
        FacetMaker.of(part.cover().trim().flattened(CHORD_ERROR), part.cover().skeleton());
    for (Facet facet : facets) {
      facet(facet);
    }
    json.writeEndArray();
  }

  private void facet(Facet facet) throws IOException {
    // One line a facet: readable in an editor, and half the size of full indentation.
    json.writeRaw('\n');
    json.writeStartObject();
    json.writeStringField("name", facet.name());
    json.writeNumberField("layer", facet.layer());
    json.writeStringField("sense", Words.of(facet.sense()));
    json.writeArrayFieldStart("polygon");
    for (Vec2 p : facet.polygon()) {
      point(p);
    }
    json.writeEndArray();
    json.writeObjectFieldStart("surface");
    if (facet.surface() instanceof Facet.Plane plane) {
      json.writeStringField("kind", "plane");
      json.writeBooleanField("exact", plane.exact());
      frame(plane.frame());
      vector("origin", plane.origin());
      vector("u", plane.u());
      vector("v", plane.v());
    } else if (facet.surface() instanceof Facet.Cylinder cylinder) {
      json.writeStringField("kind", "cylinder");
      json.writeBooleanField("exact", cylinder.exact());
      frame(cylinder.frame());
      vector("centre", cylinder.centre());
      vector("axis", cylinder.axis());
      vector("e1", cylinder.e1());
      vector("e2", cylinder.e2());
      json.writeNumberField("radius", cylinder.radius());
    } else if (facet.surface() instanceof Facet.Eased eased) {
      json.writeStringField("kind", "eased");
      json.writeBooleanField("exact", false);
      json.writeFieldName("centre");
      point(eased.centre());
      json.writeNumberField("radius", eased.radius());
      if (eased.hollow()) {
        json.writeBooleanField("hollow", true);
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void frame(Facet.Frame frame) throws IOException {
    json.writeFieldName("flatOrigin");
    point(frame.origin());
    json.writeFieldName("flatAlong");
    point(frame.along());
    json.writeFieldName("flatAcross");
    point(frame.across());
  }

  private void vector(String name, Vec3 v) throws IOException {
    json.writeFieldName(name);
    json.writeArray(new double[] {v.x(), v.y(), v.z()}, 0, 3);
  }

  private void point(Vec2 p) throws IOException {
    json.writeArray(new double[] {p.x(), p.y()}, 0, 2);
  }

  private void path(String name, Path path) throws IOException {
    json.writeFieldName(name);
    path(path);
  }

  private void path(Path path) throws IOException {
    json.writeStartObject();
    json.writeBooleanField("closed", path.closed());
    json.writeArrayFieldStart("points");
    for (Segment s : path.segments()) {
      json.writeArray(new double[] {s.start().x(), s.start().y(), s.bulge()}, 0, 3);
    }
    if (!path.closed()) {
      json.writeArray(new double[] {path.end().x(), path.end().y(), 0}, 0, 3);
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
