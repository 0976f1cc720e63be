package padwright.jobfile;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import padwright.design.EdgeShape;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.Corners;
import padwright.design.WrappedPad.DustCover;
import padwright.design.WrappedPad.Host;
import padwright.design.WrappedPad.Side;
import padwright.design.WrappedPad.SizeMeaning;
import padwright.design.WrappedPad.Treatment;
import padwright.json.Node;

/**
 * The fields a part gives with the very value that is taken where they are left out. They read the
 * same either way; only what was left out may be listed as taken, and only it stays out of a
 * written file.
 */
final class Restated {
  static final String SIZE = "base.size";
  static final String FRONT = "front";
  static final String ARRIS = "base.backArris";
  static final String EDGE = "edge";
  static final String OVER = "wadding.over";
  static final String STRETCH = "cover.stretchAllowance";
  static final String WARP = "cover.warp";
  static final String CORNERS = "corners";
  static final String HOST = "host.fixing";
  static final String DUST_COVER = "dustCover";

  private Restated() {}

  /** Of a part just read from {@code part}. */
  static Set<String> of(Node part, WrappedPad pad) {
    Set<String> plain = plain(pad);
    Set<String> given = new HashSet<>();
    for (String path : plain) {
      if (present(part, path)) {
        given.add(path);
      }
    }
    return given;
  }

  /** Whether to write a field: it says something, or the maker wrote it though it says nothing. */
  static boolean writes(WrappedPad pad, String path) {
    return pad.restated().contains(path) || !plain(pad).contains(path);
  }

  /** Every field whose value is the one taken where it is left out. */
  private static Set<String> plain(WrappedPad pad) {
    Set<String> plain = new HashSet<>();
    put(plain, SIZE, pad.base().size() == SizeMeaning.BOARD);
    put(plain, FRONT, pad.front() == Side.FRONT);
    put(plain, ARRIS, pad.base().backArris() == 0);
    put(plain, EDGE, pad.edge() instanceof EdgeShape.Square);
    put(plain, OVER, pad.wadding().isPresent() && !pad.wadding().get().overSides());
    put(plain, STRETCH, pad.cover().stretchAlong() == 0 && pad.cover().stretchAcross() == 0);
    put(plain, WARP, !pad.cover().warpAlongWidth());
    put(plain, CORNERS, pad.corners().treatments().equals(List.of(Treatment.AUTO)));
    put(plain, HOST, pad.host().equals(Host.none()));
    DustCover dust = pad.dustCover();
    put(plain, DUST_COVER, dust.wanted() && dust.inset().isEmpty() && dust.turn().isEmpty());
    return plain;
  }

  private static void put(Set<String> set, String path, boolean is) {
    if (is) {
      set.add(path);
    }
  }

  private static boolean present(Node part, String path) {
    int dot = path.indexOf('.');
    if (dot >= 0) {
      return part.get(path.substring(0, dot))
          .flatMap(n -> n.get(path.substring(dot + 1)))
          .isPresent();
    }
    Optional<Node> node = part.get(path);
    // Corners may be an object of depths that leaves the treatment itself out.
    return path.equals(CORNERS) && node.isPresent() && node.get().kind() == Node.Kind.OBJECT
        ? node.get().get("treatment").isPresent() || node.get().get("each").isPresent()
        : node.isPresent();
  }

  /** Corners that say nothing at all. */
  static boolean silent(Corners corners) {
    return corners.reliefStop().isEmpty() && corners.pleatDepth().isEmpty();
  }
}
