package padwright.drawing;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import padwright.drawing.Chain.Source;
import padwright.geometry.Affine;
import padwright.measure.InputRefused;
import padwright.measure.LengthUnit;

/**
 * Reads the strokes of an SVG file: paths and basic shapes under their transforms, in mm, y up. A
 * pull parser of XML alone, without document type, entities or any resource but the text itself.
 */
final class SvgReader {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** What may hold shapes that are drawn. */
  private static final Set<String> GROUPS = Set.of("svg", "g", "a");

  /** What holds shapes that are drawn only where something else asks for them. */
  private static final Set<String> UNDRAWN =
      Set.of("defs", "symbol", "clipPath", "mask", "pattern", "marker", "switch", "foreignObject");

  /** What holds no shapes and is nothing to report. */
  private static final Set<String> SILENT =
      Set.of("title", "desc", "metadata", "tspan", "stop", "linearGradient", "radialGradient");

  private static final Pattern MOVES =
      Pattern.compile("(?is).*[{;\\s](transform|translate|rotate|scale)\\s*:.*");

  private final Budget budget;
  private final Tally tally;
  private final SvgSafety safety;
  private final Optional<LengthUnit> plain;
  private final List<Chain> chains = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Deque<Frame> frames = new ArrayDeque<>();
  private String scale = "";

  /** Where in the tree: the map to mm, the layer, and why shapes here are not drawn, or empty. */
  private record Frame(String kind, Affine map, String layer, String hidden) {}

  SvgReader(Budget budget, Tally tally, Optional<LengthUnit> plain) {
    this.budget = budget;
    this.tally = tally;
    this.safety = new SvgSafety(budget);
    this.plain = plain;
  }

  String scale() {
    return scale;
  }

  List<String> notes() {
    return notes;
  }

  List<Chain> read(byte[] bytes) {
    try {
      XMLStreamReader xml = factory().createXMLStreamReader(new ByteArrayInputStream(bytes));
      try {
        while (xml.hasNext()) {
          event(xml, xml.next());
        }
      } finally {
        xml.close();
      }
    } catch (XMLStreamException e) {
      throw malformed(e);
    }
    return chains;
  }

  private static XMLInputFactory factory() {
    // The JDK's own, whatever is on the class path, with everything off that looks elsewhere.
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    // A style sheet in one piece, so that nothing in it is looked at by halves.
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside the file is read");
        });
    return factory;
  }

  private InputRefused malformed(XMLStreamException e) {
    int line = e.getLocation() == null ? 0 : e.getLocation().getLineNumber();
    return budget.refuse(
        line,
        "the file is not whole, well-formed XML from here on",
        "Save the drawing again as plain SVG");
  }

  private void event(XMLStreamReader xml, int event) {
    budget.time();
    switch (event) {
      case XMLStreamConstants.START_ELEMENT -> start(xml);
      case XMLStreamConstants.END_ELEMENT -> frames.pop();
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text(xml);
      case XMLStreamConstants.PROCESSING_INSTRUCTION -> safety.instruction(xml);
      case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
          throw safety.doctype(xml.getLocation().getLineNumber());
      default -> {
        // Comments, spaces and the document's ends say nothing.
      }
    }
  }

  private void text(XMLStreamReader xml) {
    if (frames.isEmpty() || !frames.peek().kind().equals("style")) {
      return;
    }
    String text = xml.getText();
    int line = xml.getLocation().getLineNumber();
    safety.style(text, line);
    if (MOVES.matcher(text).matches()) {
      throw budget.refuse(
          line,
          "a style sheet moves shapes, and style sheets are not read",
          "Save the drawing with transforms as plain attributes");
    }
  }

  private void start(XMLStreamReader xml) {
    int line = xml.getLocation().getLineNumber();
    int number = budget.element(line);
    safety.element(xml);
    if (frames.size() >= DrawingLimits.MOST_DEPTH) {
      throw budget.refuse(
          line,
          "groups are nested more than " + DrawingLimits.MOST_DEPTH + " deep",
          "Ungroup the drawing");
    }
    String kind = xml.getLocalName();
    SvgAttributes attributes = new SvgAttributes(xml, budget);
    boolean ours = xml.getNamespaceURI() == null || xml.getNamespaceURI().equals(SVG);
    if (frames.isEmpty()) {
      root(kind, ours, attributes);
      return;
    }
    Frame parent = frames.peek();
    Source source = new Source(kind, parent.layer(), line, number);
    String hidden = parent.hidden();
    if (hidden.isEmpty() && ours && attributes.hidden()) {
      hidden = "hidden";
    }
    Frame frame = new Frame(kind, parent.map(), parent.layer(), hidden);
    if (!ours) {
      frame = new Frame("", parent.map(), parent.layer(), "not SVG");
    } else if (GROUPS.contains(kind)) {
      frame = group(kind, attributes, parent, hidden, source);
    } else if (UNDRAWN.contains(kind)) {
      frame = new Frame(kind, parent.map(), parent.layer(), "in " + kind);
    } else if (SvgShapes.DRAWN.contains(kind)) {
      shape(kind, attributes, parent, hidden, source);
    } else if (kind.equals("style")) {
      notes.add("a style sheet was not read: shapes that it hides are taken all the same");
    } else if (!SILENT.contains(kind) && hidden.isEmpty()) {
      tally.left(source, "");
      frame = new Frame(kind, parent.map(), parent.layer(), "in " + kind);
    }
    frames.push(frame);
  }

  private void root(String kind, boolean ours, SvgAttributes attributes) {
    if (!kind.equals("svg") || !ours) {
      throw budget.refuse(
          attributes.line(), "this is XML, but not an SVG drawing", "Save the drawing as SVG");
    }
    attributes.checkRoot(plain.isPresent());
    SvgUnits units = SvgUnits.of(attributes, plain);
    scale = units.words();
    frames.push(new Frame(kind, units.map(), "", attributes.hidden() ? "hidden" : ""));
  }

  private Frame group(
      String kind, SvgAttributes attributes, Frame parent, String hidden, Source source) {
    if (kind.equals("svg")) {
      tally.left(source, "a drawing within the drawing");
      return new Frame(kind, parent.map(), parent.layer(), "in an inner svg");
    }
    Affine map = parent.map().after(attributes.transform());
    String name = attributes.text("label").or(() -> attributes.text("id")).orElse(parent.layer());
    return new Frame(kind, map, name, hidden);
  }

  private void shape(
      String kind, SvgAttributes attributes, Frame parent, String hidden, Source source) {
    if (!hidden.isEmpty()) {
      tally.left(source, hidden);
      return;
    }
    Affine map = parent.map().after(attributes.transform());
    if (!map.finite() || map.determinant() == 0) {
      tally.left(source, "flattened by its transform");
      return;
    }
    Pen pen = new Pen(map, source, budget);
    SvgShapes.draw(kind, attributes, pen, budget);
    List<Chain> drawn = pen.chains();
    if (drawn.isEmpty()) {
      tally.left(source, "draws nothing");
    }
    chains.addAll(drawn);
  }
}
