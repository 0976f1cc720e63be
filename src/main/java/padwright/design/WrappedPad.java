package padwright.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A pad whose covering is pulled over foam and stapled to the back of a base board: what the maker
 * asked for, with gaps where a default is to be taken. All lengths in mm.
 *
 * @param restated paths, such as {@code base.size}, of fields that have no gap and that the job
 *     gives, though with the very value that is taken where they are left out
 */
public record WrappedPad(
    String id,
    String name,
    Kind kind,
    int quantity,
    int mirrored,
    Side front,
    Base base,
    List<FoamLayer> foam,
    Optional<WaddingLayer> wadding,
    EdgeShape edge,
    Cover cover,
    Corners corners,
    Staples staples,
    Host host,
    DustCover dustCover,
    List<Run> runs,
    Fittings fittings,
    Set<String> restated)
    implements PaddedPart {
  public WrappedPad {
    foam = List.copyOf(foam);
    runs = List.copyOf(runs);
    restated = Set.copyOf(restated);
  }

  /** A part whose plain values were all left out. */
  public WrappedPad(
      String id,
      String name,
      Kind kind,
      int quantity,
      int mirrored,
      Side front,
      Base base,
      List<FoamLayer> foam,
      Optional<WaddingLayer> wadding,
      EdgeShape edge,
      Cover cover,
      Corners corners,
      Staples staples,
      Host host,
      DustCover dustCover,
      List<Run> runs,
      Fittings fittings) {
    this(
        id, name, kind, quantity, mirrored, front, base, foam, wadding, edge, cover, corners,
        staples, host, dustCover, runs, fittings, Set.of());
  }

  /** A part whose edge is the same all round, and without cut-outs or fittings. */
  public WrappedPad(
      String id,
      String name,
      Kind kind,
      int quantity,
      int mirrored,
      Side front,
      Base base,
      List<FoamLayer> foam,
      Optional<WaddingLayer> wadding,
      EdgeShape edge,
      Cover cover,
      Corners corners,
      Staples staples,
      Host host,
      DustCover dustCover) {
    this(
        id,
        name,
        kind,
        quantity,
        mirrored,
        front,
        base,
        foam,
        wadding,
        edge,
        cover,
        corners,
        staples,
        host,
        dustCover,
        List.of(),
        Fittings.none());
  }

  /** The same part, with {@link #restated} as given. */
  public WrappedPad withRestated(Set<String> fields) {
    return new WrappedPad(
        id, name, kind, quantity, mirrored, front, base, foam, wadding, edge, cover, corners,
        staples, host, dustCover, runs, fittings, fields);
  }

  /** What the part is for: it sets the order of driving staples. */
  public enum Kind {
    FOREARM_REST,
    STOOL_TOP,
    SEAT,
    PANEL,
    ARMREST,
    KNEELER,
    PAD
  }

  /** A side of the part, seen from its face with the front at the bottom. */
  public enum Side {
    FRONT,
    RIGHT,
    BACK,
    LEFT
  }

  /** What the outline's size is the size of. */
  public enum SizeMeaning {
    FINISHED,
    OPENING,
    BOARD
  }

  /** What stands beside a side. */
  public enum Neighbour {
    /** Nothing: the middle of the covered side lies on the size. */
    FREE,
    /** Touches what is beside it: the thickest place of the side lies on the size. */
    BUTTING,
    /** The thickest place of the side stays the clearance away from the size. */
    KEEP_CLEAR
  }

  /**
   * The base board.
   *
   * @param outline its shape; the size is what {@code size} says
   * @param sides what stands beside front, right, back, left (in that order); four entries
   * @param clearance gap per keep-clear side
   * @param thickness nominal
   * @param measured what a caliper said; replaces the tolerance's lower limit
   * @param backArris radius on the back arris, 0 = left sharp
   */
  public record Base(
      OutlineShape outline,
      SizeMeaning size,
      List<Neighbour> sides,
      OptionalDouble clearance,
      String board,
      double thickness,
      OptionalDouble measured,
      double backArris,
      List<Hole> holes) {
    public Base {
      sides = List.copyOf(sides);
      holes = List.copyOf(holes);
    }
  }

  /** A hole in the base, x and y from the middle of the outline's bounding box, from the face. */
  public record Hole(double x, double y, double diameter) {}

  /**
   * A foam layer, from the board upwards.
   *
   * @param overhang beyond the base outline; negative = stepped back; empty = the default
   * @param crown set in under the layers above, which are laid over it and come down to the edge
   */
  public record FoamLayer(String foam, double thickness, OptionalDouble overhang, boolean crown) {
    /** A layer that is no crown. */
    public FoamLayer(String foam, double thickness, OptionalDouble overhang) {
      this(foam, thickness, overhang, false);
    }
  }

  /** The wadding; thickness is the compressed one, empty = the catalogue's. */
  public record WaddingLayer(String wadding, OptionalDouble thickness, boolean overSides) {}

  /**
   * The covering and how it is cut.
   *
   * @param thickness empty = the catalogue's
   * @param turnUnder covering folded on to the back, at the trim line
   * @param grip what is left beyond the trim line for fingers or pliers
   * @param stretchAlong length taken off for stretch along the covering's warp, 0.03 = 3 %
   * @param stretchAcross the same across the warp
   * @param warpAlongWidth the warp runs front to back instead of left to right
   */
  public record Cover(
      String covering,
      OptionalDouble thickness,
      OptionalDouble turnUnder,
      OptionalDouble grip,
      double stretchAlong,
      double stretchAcross,
      boolean warpAlongWidth) {}

  /**
   * How corners are folded.
   *
   * @param treatments one for all corners, or one per corner starting front left, anticlockwise
   *     seen from the face
   * @param reliefStop how far a relief cut stops short of the fold that hides it
   * @param pleatDepth depth of one pleat at a rounded corner
   */
  public record Corners(
      List<Treatment> treatments, OptionalDouble reliefStop, OptionalDouble pleatDepth) {
    public Corners {
      treatments = List.copyOf(treatments);
    }
  }

  /** A way to fold a corner. */
  public enum Treatment {
    AUTO,
    SINGLE_PLEAT,
    DOUBLE_PLEAT,
    MITRED_END,
    EASED,
    PLEATS,
    NOTCHES,
    /** A hollow corner: slit, and a piece let in. */
    GUSSET,
    /** A hollow curve: the turn-under clipped so that it opens. */
    CLIPS
  }

  /**
   * The staples.
   *
   * @param staple catalogue series; empty = the first in the catalogue
   * @param leg nominal leg; empty = the longest that passes
   * @param pull of the covering on a side, N per mm, when the maker has a figure for it
   */
  public record Staples(
      Optional<String> staple,
      OptionalDouble leg,
      OptionalDouble spacing,
      OptionalDouble edgeDistance,
      OptionalDouble pull) {}

  /** How the finished part is held. */
  public enum Fixing {
    NONE,
    SCREWS,
    TAPE
  }

  /** The surface of what it is fixed to. */
  public enum Finish {
    BARE,
    LACQUERED,
    WAXED,
    OILED
  }

  /**
   * What the part is fixed to.
   *
   * @param thickness of the host that a screw passes from behind; empty where not given
   * @param screw catalogue name; empty = the first in the catalogue
   * @param screwLength empty = the longest that passes
   */
  public record Host(
      Fixing fixing,
      OptionalDouble thickness,
      Finish finish,
      Optional<String> screw,
      OptionalDouble screwLength,
      List<Hole> positions) {
    public Host {
      positions = List.copyOf(positions);
    }

    public static Host none() {
      return new Host(
          Fixing.NONE,
          OptionalDouble.empty(),
          Finish.BARE,
          Optional.empty(),
          OptionalDouble.empty(),
          List.of());
    }
  }

  /**
   * The cloth over the staples on the back.
   *
   * @param wanted whether there is one
   * @param inset its finished edge inside the base's edge
   * @param turn its own edge turned under
   */
  public record DustCover(boolean wanted, OptionalDouble inset, OptionalDouble turn) {}

  /**
   * How a run of the outline differs from the rest of the part; what is empty stays the same.
   *
   * @param sides names of sides: "front", "right", "back", "left", or "side 1" and so on of a free
   *     outline
   * @param edge shape of the foam's top edge
   * @param turnUnder covering folded on to the back, at the trim line
   * @param overhang of every foam layer beyond the base outline
   * @param open the covering is not turned under here
   * @param passage length of the straight side beyond the run over which its edge passes into that
   *     side's, where the two meet without a corner
   */
  public record Run(
      List<String> sides,
      Optional<EdgeShape> edge,
      OptionalDouble turnUnder,
      OptionalDouble overhang,
      Optional<Open> open,
      OptionalDouble passage) {
    public Run {
      sides = List.copyOf(sides);
    }

    public Run(
        List<String> sides,
        Optional<EdgeShape> edge,
        OptionalDouble turnUnder,
        OptionalDouble overhang,
        Optional<Open> open) {
      this(sides, edge, turnUnder, overhang, open, OptionalDouble.empty());
    }
  }

  /** A run where the covering is not turned under. */
  public enum Open {
    /** It ends at the edge of the face: the side stands against a wall. */
    BARE,
    /** It goes down the side and is glued there, cut off level with the back. */
    GLUED
  }
}
