package padwright.pattern;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import padwright.design.WrappedPad;
import padwright.design.WrappedPad.WaddingLayer;
import padwright.material.Board;
import padwright.material.Catalogue;
import padwright.material.Constants;
import padwright.material.Wadding;
import padwright.measure.InputRefused;
import padwright.measure.LengthText;
import padwright.measure.Rounding;
import padwright.pattern.FitAnswer.Change;
import padwright.pattern.FitWish.Freedom;

/**
 * Finds foam for a finished height, the other way round than {@link PatternEngine}: height = board
 * + foam + wadding + covering, so the foam is what is left over, made up of sheets that are sold
 * ({@link SheetStacks}). The best make-ups are worked out whole, so that each answer has its base
 * and its findings; one with a stop is no answer. Has no state; safe to share. All mm.
 */
public final class HeightFit {
  private static final int INCH_PARTS = 32;

  private static final double SAME = 1e-6;

  private final Catalogue catalogue;
  private final PatternEngine engine;

  public HeightFit(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.engine = new PatternEngine(catalogue);
  }

  /** By how much a sheet of foam may differ from the thickness it is sold as, either way. */
  public static double tolerance() {
    return Constants.value("foam-thickness-tolerance");
  }

  static boolean withinTolerance(double error) {
    return Math.abs(error) <= tolerance() + SAME;
  }

  /**
   * The part with the length, width and meaning of size that are wanted, its make-up as it is.
   *
   * @throws InputRefused where it has no such length or width
   */
  public static WrappedPad sized(WrappedPad part, FitWish wish) {
    return PadChange.sized(part, wish);
  }

  /** A board or a wadding that may be taken, and how it differs. */
  private record Bottom(
      double board, Optional<WaddingLayer> wadding, double wad, Set<Change> changes, double off) {
    double height() {
      return board + wad;
    }
  }

  /**
   * The make-ups for a height.
   *
   * @throws InputRefused where the part has no such length or width, where the height cannot be had
   *     with the sheets of the catalogue (it says the least and the most that can), and where no
   *     make-up can be worked out at all
   */
  public FitResult find(WrappedPad part, FitWish wish) {
    WrappedPad start = PadChange.sized(part, wish);
    double covering = covering(start);
    List<Bottom> bottoms = bottoms(start, wish);
    SheetStacks stacks = new SheetStacks(start, catalogue);
    double least = stacks.least() + covering + lowest(bottoms);
    double most = stacks.most() + covering + highest(bottoms);
    if (wish.height() < least - tolerance() - SAME || wish.height() > most + tolerance() + SAME) {
      throw outOfReach(start, wish, least, most);
    }
    List<FitCandidate> all = new ArrayList<>();
    for (Bottom b : bottoms) {
      double foam = wish.height() - covering - b.height();
      for (SheetStacks.Found s : stacks.near(foam)) {
        Set<Change> changes = EnumSet.noneOf(Change.class);
        changes.addAll(b.changes());
        if (s.otherFoam()) {
          changes.add(Change.FOAM);
        }
        double error = s.thickness() - foam;
        all.add(
            new FitCandidate(
                b.board(),
                s.layers(),
                b.wadding(),
                error,
                changes,
                s.departure() + b.off(),
                all.size()));
      }
    }
    FitTrial trial = new FitTrial(engine, start, wish, all);
    trial.run();
    return new FitResult(start, wish, least, most, trial.answers(), trial.rejected());
  }

  private static double lowest(List<Bottom> bottoms) {
    return bottoms.stream().mapToDouble(Bottom::height).min().orElseThrow();
  }

  private static double highest(List<Bottom> bottoms) {
    return bottoms.stream().mapToDouble(Bottom::height).max().orElseThrow();
  }

  private double covering(WrappedPad pad) {
    OptionalDouble given = pad.cover().thickness();
    return given.isPresent()
        ? given.getAsDouble()
        : catalogue
            .covering(pad.cover().covering())
            .orElseThrow(() -> unknown(pad, Catalogue.Kind.COVERING, pad.cover().covering()))
            .thickness();
  }

  /** Every board and wadding that may be taken, the part's own first. */
  private List<Bottom> bottoms(WrappedPad pad, FitWish wish) {
    double own = pad.base().thickness();
    List<Double> boards = new ArrayList<>(List.of(own));
    if (wish.free().contains(Freedom.BOARD)) {
      String id = pad.base().board();
      Board board = catalogue.board(id).orElseThrow(() -> unknown(pad, Catalogue.Kind.BOARD, id));
      board.thicknesses().stream()
          .map(Board.Thickness::nominal)
          .filter(t -> Math.abs(t - own) > SAME)
          .forEach(boards::add);
    }
    List<Optional<WaddingLayer>> waddings = new ArrayList<>(List.of(pad.wadding()));
    if (wish.free().contains(Freedom.WADDING)) {
      waddings.addAll(otherWaddings(pad));
    }
    double ownWad = compressed(pad, pad.wadding());
    List<Bottom> all = new ArrayList<>();
    for (double board : boards) {
      for (Optional<WaddingLayer> w : waddings) {
        Set<Change> changes = EnumSet.noneOf(Change.class);
        if (board != own) {
          changes.add(Change.BOARD);
        }
        if (!w.equals(pad.wadding())) {
          changes.add(Change.WADDING);
        }
        double wad = compressed(pad, w);
        double off = Math.abs(board - own) + Math.abs(wad - ownWad);
        all.add(new Bottom(board, w, wad, changes, off));
      }
    }
    return all;
  }

  /** None, and all that the part has not; over the sides where its own is. */
  private List<Optional<WaddingLayer>> otherWaddings(WrappedPad pad) {
    List<Optional<WaddingLayer>> others = new ArrayList<>();
    if (pad.wadding().isPresent()) {
      others.add(Optional.empty());
    }
    boolean overSides = pad.wadding().map(WaddingLayer::overSides).orElse(false);
    String own = pad.wadding().map(WaddingLayer::wadding).orElse("");
    for (Wadding w : catalogue.waddings()) {
      if (!w.id().equals(own)) {
        others.add(Optional.of(new WaddingLayer(w.id(), OptionalDouble.empty(), overSides)));
      }
    }
    return others;
  }

  private double compressed(WrappedPad pad, Optional<WaddingLayer> layer) {
    if (layer.isEmpty()) {
      return 0;
    }
    String id = layer.get().wadding();
    Wadding row = catalogue.wadding(id).orElseThrow(() -> unknown(pad, Catalogue.Kind.WADDING, id));
    return layer.get().thickness().orElse(row.compressed());
  }

  private InputRefused unknown(WrappedPad pad, Catalogue.Kind kind, String id) {
    return new InputRefused(
        "",
        0,
        "parts[" + pad.id() + "]",
        "the catalogue's " + kind.section() + " has no \"" + id + "\"",
        "Nearest: " + String.join(", ", catalogue.nearest(kind, id)));
  }

  private static InputRefused outOfReach(WrappedPad pad, FitWish wish, double least, double most) {
    boolean low = wish.height() < least;
    String rest = wish.free().isEmpty() ? ", or leave board and wadding free as well" : "";
    return new InputRefused(
        "",
        0,
        "parts[" + pad.id() + "].foam",
        "a finished height of "
            + said(wish.height())
            + " cannot be had with the sheets of the catalogue: the least is "
            + said(least)
            + " and the most "
            + said(most),
        (low ? "Take a thinner board, wadding or foam" : "Take a thicker board or more foams")
            + rest
            + ", or a height between the two");
  }

  private static String said(double mm) {
    return LengthText.mm(mm) + " (" + LengthText.inches(mm, INCH_PARTS, Rounding.NEAREST) + ")";
  }
}
