package padwright.jobfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import padwright.design.EdgeShape;
import padwright.design.Fittings;
import padwright.design.OutlineShape;
import padwright.design.PaddedPart;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Base;
import padwright.design.WrappedPad.Cover;
import padwright.design.WrappedPad.FoamLayer;
import padwright.design.WrappedPad.Kind;
import padwright.design.WrappedPad.Run;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.json.Node;

/** Reads one part: what lies on the base, and around it; the rest it hands on. */
final class PartReader {
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]{1," + Limits.LONGEST_ID + "}");

  private final Rows rows;
  private final Lengths lengths;
  private final BaseReader bases;
  private final FixingReader fixings;

  PartReader(Rows rows, Lengths lengths) {
    this.rows = rows;
    this.lengths = lengths;
    this.bases = new BaseReader(rows, lengths);
    this.fixings = new FixingReader(rows, lengths);
  }

  PaddedPart part(Node part) {
    part.requireObject(
        "id",
        "name",
        "build",
        "kind",
        "quantity",
        "mirrored",
        "front",
        "base",
        "foam",
        "wadding",
        "edge",
        "cover",
        "corners",
        "staples",
        "host",
        "dustCover",
        "runs",
        "fittings");
    checkBuild(part.require("build"));
    Base base = bases.base(part.require("base"));
    List<FoamLayer> foam = foam(part.require("foam"), base);
    double foamHeight =
        foam.stream().filter(l -> !l.crown()).mapToDouble(FoamLayer::thickness).sum();
    WrappedPad pad =
        new WrappedPad(
            id(part.require("id")),
            Fields.label(part.require("name")),
            part.get("kind").map(Words.KIND::read).orElse(Kind.PAD),
            part.get("quantity").map(n -> n.integer(1, Limits.MOST_QUANTITY)).orElse(1),
            part.get("mirrored").map(n -> n.integer(0, Limits.MOST_QUANTITY)).orElse(0),
            part.get("front").map(Words.SIDE::read).orElse(Side.FRONT),
            base,
            foam,
            part.get("wadding").map(this::wadding),
            part.get("edge")
                .map(n -> edge(n, foamHeight, Outlines.shorterSide(base.outline())))
                .orElse(new EdgeShape.Square()),
            cover(part.require("cover")),
            fixings.corners(part.get("corners"), base.outline()),
            fixings.staples(part.get("staples"), base.outline()),
            fixings.host(part.get("host"), base.outline()),
            fixings.dustCover(part.get("dustCover"), base.outline()),
            runs(part, base.outline(), foamHeight),
            part.get("fittings")
                .map(n -> new FittingReader(bases, lengths).fittings(n, base.outline()))
                .orElse(Fittings.none()));
    return pad.withRestated(Restated.of(part, pad));
  }

  private List<Run> runs(Node part, OutlineShape outline, double foamHeight) {
    double across = Outlines.shorterSide(outline);
    return new RunReader(lengths, outline, across, n -> edge(n, foamHeight, across)).runs(part);
  }

  private static String id(Node node) {
    if (!ID.matcher(node.string()).matches()) {
      throw node.refuse(
          node.shown() + " cannot be an id",
          "Use 1 to " + Limits.LONGEST_ID + " letters a to z, digits, - and _; files are named so");
    }
    return node.string();
  }

  private static void checkBuild(Node node) {
    if (!node.string().equals("wrapped")) {
      throw node.refuse(
          node.shown() + " is a build this program does not cover",
          "Write \"wrapped\": a covering pulled over foam and stapled to the back of a board");
    }
  }

  private List<FoamLayer> foam(Node list, Base base) {
    List<FoamLayer> layers = new ArrayList<>();
    double most = Limits.mostStep(Outlines.shorterSide(base.outline()));
    for (Node layer : list.array(1, Limits.MOST_LAYERS)) {
      layer.requireObject("foam", "thickness", "overhang", "crown");
      layers.add(
          new FoamLayer(
              rows.foam(layer.require("foam")),
              lengths.mm(layer.require("thickness"), Limits.LEAST_FOAM, Limits.MOST_FOAM),
              lengths.optional(layer, "overhang", -most, Limits.MOST_FOAM),
              layer.get("crown").map(Node::bool).orElse(false)));
      checkCrown(layer, layers.get(layers.size() - 1));
    }
    List<Node> nodes = list.array(1, Limits.MOST_LAYERS);
    if (layers.get(layers.size() - 1).crown()) {
      throw nodes
          .get(nodes.size() - 1)
          .require("crown")
          .refuse(
              "true: a crown has no layer laid over it",
              "Add a layer after it, or leave crown out: the covering goes straight over a layer"
                  + " that is stepped back");
    }
    return layers;
  }

  /** A crown that stood out to the edge would dome nothing. */
  private static void checkCrown(Node node, FoamLayer layer) {
    if (!layer.crown()) {
      return;
    }
    if (layer.overhang().isEmpty()) {
      throw node.require("crown")
          .refuse(
              "true: a crown must say how far it is set in",
              "Give it an overhang that is negative, such as -40");
    }
    if (layer.overhang().getAsDouble() >= 0) {
      Node overhang = node.require("overhang");
      throw overhang.refuse(
          overhang.shown() + " does not set the crown in",
          "Give it an overhang that is negative, such as -40, or leave crown out");
    }
  }

  private WaddingLayer wadding(Node node) {
    node.requireObject("wadding", "thickness", "over");
    return new WaddingLayer(
        rows.wadding(node.require("wadding")),
        lengths.optional(node, "thickness", Limits.LEAST_WADDING, Limits.MOST_WADDING),
        node.get("over")
            .map(n -> n.oneOf(List.of("top", "top and sides")).equals("top and sides"))
            .orElse(false));
  }

  private EdgeShape edge(Node node, double foamHeight, double shorterSide) {
    if (node.kind() == Node.Kind.STRING) {
      return node.oneOf(List.of("square", "full round")).equals("square")
          ? new EdgeShape.Square()
          : new EdgeShape.FullRound();
    }
    if (node.kind() != Node.Kind.OBJECT) {
      throw node.refuse(
          node.shown() + " is not an edge",
          "Write \"square\", \"full round\", { \"round\": 6 } or { \"bevel\": 6 }");
    }
    String shape = Fields.single(node, "round", "bevel");
    Node size = node.require(shape);
    double mm = lengths.mm(size, Limits.LEAST_EDGE, Limits.MOST_FOAM);
    if (mm > foamHeight + Limits.ROUNDING) {
      throw size.refuse(
          size.shown() + " is more than the foam's " + lengths.shown(foamHeight),
          "Give at most the foam's height, or thicker foam");
    }
    if (mm > shorterSide / 2 + Limits.ROUNDING) {
      throw size.refuse(
          size.shown() + " is more than half the shorter side",
          "Give at most " + lengths.shown(shorterSide / 2));
    }
    return shape.equals("round") ? new EdgeShape.Round(mm) : new EdgeShape.Bevel(mm);
  }

  private Cover cover(Node node) {
    node.requireObject("covering", "thickness", "turnUnder", "grip", "stretchAllowance", "warp");
    Optional<Node> stretch =
        node.get("stretchAllowance").map(n -> n.requireObject("along", "across"));
    return new Cover(
        rows.covering(node.require("covering")),
        lengths.optional(node, "thickness", 0, Limits.MOST_COVERING),
        lengths.optional(node, "turnUnder", Limits.LEAST_TURN_UNDER, Limits.MOST_TURN_UNDER),
        lengths.optional(node, "grip", 0, Limits.MOST_TURN_UNDER),
        stretch(stretch, "along").orElse(0),
        stretch(stretch, "across").orElse(0),
        node.get("warp")
            .map(n -> n.oneOf(List.of("length", "width")).equals("width"))
            .orElse(false));
  }

  private static OptionalDouble stretch(Optional<Node> stretch, String axis) {
    return stretch
        .flatMap(n -> n.get(axis))
        .map(n -> OptionalDouble.of(n.number(0, Limits.MOST_STRETCH)))
        .orElse(OptionalDouble.empty());
  }
}
