package padwright.export;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG back without any code of the writer: lengths of the paths of each group. Arcs by the
 * conversion from end points to centre of SVG 1.1, appendix F.6.5.
 */
final class SvgBack {
  private static final Pattern TOKEN = Pattern.compile("[MLAZ]|-?[0-9]+(?:\\.[0-9]+)?");

  final Map<String, Double> lengths = new LinkedHashMap<>();
  final Map<String, List<double[]>> points = new LinkedHashMap<>();
  final List<String> texts = new ArrayList<>();
  final Map<String, String> root = new LinkedHashMap<>();

  SvgBack(String svg) {
    try {
      read(XMLInputFactory.newFactory().createXMLStreamReader(new StringReader(svg)));
    } catch (XMLStreamException e) {
      throw new AssertionError(e);
    }
  }

  double length(String id) {
    return lengths.getOrDefault(id, 0.0);
  }

  private void read(XMLStreamReader in) throws XMLStreamException {
    String id = "";
    while (in.hasNext()) {
      if (in.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      switch (in.getLocalName()) {
        case "svg" -> {
          for (int i = 0; i < in.getAttributeCount(); i++) {
            root.put(in.getAttributeLocalName(i), in.getAttributeValue(i));
          }
        }
        case "g" -> id = in.getAttributeValue(null, "id");
        case "path" -> path(id, in.getAttributeValue(null, "d"));
        case "text" -> texts.add(in.getElementText());
        default -> {}
      }
    }
  }

  private void path(String id, String d) {
    List<String> tokens = new ArrayList<>();
    Matcher m = TOKEN.matcher(d);
    while (m.find()) {
      tokens.add(m.group());
    }
    double x = 0;
    double y = 0;
    double startX = 0;
    double startY = 0;
    double length = 0;
    int i = 0;
    List<double[]> list = points.computeIfAbsent(id, k -> new ArrayList<>());
    while (i < tokens.size()) {
      String command = tokens.get(i);
      double[] n = new double[command.equals("A") ? 7 : command.equals("Z") ? 0 : 2];
      for (int k = 0; k < n.length; k++) {
        n[k] = Double.parseDouble(tokens.get(i + 1 + k));
      }
      i += 1 + n.length;
      double toX = n.length == 0 ? startX : n[n.length - 2];
      double toY = n.length == 0 ? startY : n[n.length - 1];
      switch (command) {
        case "M" -> {
          startX = toX;
          startY = toY;
        }
        case "A" -> length += arc(x, y, n);
        default -> length += Math.hypot(toX - x, toY - y);
      }
      x = toX;
      y = toY;
      list.add(new double[] {x, y});
    }
    lengths.merge(id, length, Double::sum);
  }

  private static double arc(double x1, double y1, double[] n) {
    // Appendix F.6.2: no arc where the ends are one point, a line where the radius is nought.
    if (n[0] == 0 || (x1 == n[5] && y1 == n[6])) {
      return Math.hypot(n[5] - x1, n[6] - y1);
    }
    double r = n[0];
    double px = (x1 - n[5]) / 2;
    double py = (y1 - n[6]) / 2;
    double lambda = (px * px + py * py) / (r * r);
    if (lambda > 1) {
      r *= Math.sqrt(lambda);
    }
    double root = Math.sqrt(Math.max(0, (r * r - px * px - py * py) / (px * px + py * py)));
    double sign = n[3] == n[4] ? -1 : 1;
    double cx = sign * root * py;
    double cy = -sign * root * px;
    double from = Math.atan2((py - cy) / r, (px - cx) / r);
    double to = Math.atan2((-py - cy) / r, (-px - cx) / r);
    double sweep = to - from;
    if (n[4] == 0 && sweep > 0) {
      sweep -= 2 * Math.PI;
    } else if (n[4] == 1 && sweep < 0) {
      sweep += 2 * Math.PI;
    }
    return r * Math.abs(sweep);
  }
}
