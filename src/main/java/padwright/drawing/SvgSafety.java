package padwright.drawing;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamReader;
import padwright.measure.InputRefused;

/**
 * Refuses what has no place in a drawing that somebody else made: scripts, event handlers, and
 * anything that points out of the file. None of it would be run or fetched anyhow; a file that has
 * it is not what the maker thinks it is.
 */
final class SvgSafety {
  private static final Set<String> SCRIPTS = Set.of("script", "handler", "listener");
  private static final Pattern URL = Pattern.compile("(?i)url\\s*\\(\\s*[\"']?\\s*(.?)");
  private static final String REMEDY =
      "Save the outline alone as plain SVG, without scripts, links and linked pictures";

  private final Budget budget;

  SvgSafety(Budget budget) {
    this.budget = budget;
  }

  void element(XMLStreamReader xml) {
    int line = xml.getLocation().getLineNumber();
    String kind = xml.getLocalName();
    if (SCRIPTS.contains(kind.toLowerCase(Locale.ROOT))) {
      throw refuse(line, "the drawing holds a script");
    }
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      attribute(
          xml.getAttributeLocalName(i).toLowerCase(Locale.ROOT), xml.getAttributeValue(i), line);
    }
  }

  private void attribute(String name, String value, int line) {
    if (name.startsWith("on") && name.length() > 2) {
      throw refuse(line, "the drawing holds an event handler, " + SvgAttributes.shown(name));
    }
    if (name.equals("base")) {
      throw refuse(line, "the drawing moves its links elsewhere with xml:base");
    }
    if (name.equals("href") || name.equals("src")) {
      String target = value.strip();
      boolean inside = target.isEmpty() || target.startsWith("#");
      if (!inside && !target.regionMatches(true, 0, "data:image/", 0, 11)) {
        throw refuse(line, "the drawing points out of the file, to " + SvgAttributes.shown(target));
      }
    }
    if (name.equals("style") || value.indexOf('(') >= 0) {
      style(value, line);
    }
  }

  /** A style sheet or a style attribute: only places in the same file may be named. */
  void style(String text, int line) {
    if (text.toLowerCase(Locale.ROOT).contains("@import")) {
      throw refuse(line, "a style imports another file");
    }
    Matcher m = URL.matcher(text);
    while (m.find()) {
      if (!m.group(1).equals("#")) {
        throw refuse(line, "a style points out of the file with url(...)");
      }
    }
  }

  /** Anything of a document type: it may define entities that grow without end, or name files. */
  InputRefused doctype(int line) {
    return refuse(line, "the drawing has a DOCTYPE or entities, which are not read");
  }

  void instruction(XMLStreamReader xml) {
    if ("xml-stylesheet".equals(xml.getPITarget())) {
      throw refuse(
          xml.getLocation().getLineNumber(), "the drawing points to a style sheet of its own");
    }
  }

  private InputRefused refuse(int line, String problem) {
    return budget.refuse(line, problem, REMEDY);
  }
}
