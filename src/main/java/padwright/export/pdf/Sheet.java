package padwright.export.pdf;

import padwright.geometry.Affine;
import padwright.geometry.Bounds;
import padwright.measure.InputRefused;

/**
 * One page: its paper, which way up it is read, and the box that may be printed on, in mm as a
 * ruler finds them on the print. The box starts at the origin of that frame. The page itself always
 * stands upright in the file, so that a correction's axes are the paper's; a page read lying is
 * turned for display.
 *
 * @param paperWidth of the page as the file gives it, mm
 * @param paperHeight of the page as the file gives it, mm
 * @param turned read with its long side across
 */
record Sheet(double paperWidth, double paperHeight, boolean turned, PrintCorrection correction) {
  /** Points in a millimetre. */
  static final double POINTS = 72 / 25.4;

  /** Kept free along every edge, mm: no home printer prints nearer than 6; our own limit. */
  static final double MARGIN = 10;

  /** Beneath the pattern, for the sheet's name and the line across. */
  static final double FOOT = 17;

  /** Right of the pattern, for the upright line. */
  static final double SIDE = 7;

  /** What the furniture needs each way, mm. */
  static final double LEAST_ROOM = 125;

  /** The longest page PDF allows, 14,400 points, mm; the last tenth is left for rounding. */
  static final double LONGEST_PAGE = 5080 - 0.1;

  Sheet {
    if (paperWidth - 2 * MARGIN < LEAST_ROOM || paperHeight - 2 * MARGIN < LEAST_ROOM) {
      throw new InputRefused(
          "",
          0,
          "",
          "A page of " + Sizes.mm(paperWidth) + " x " + Sizes.mm(paperHeight) + " mm is too small",
          "Choose a paper at least " + Sizes.mm(LEAST_ROOM + 2 * MARGIN) + " mm each way");
    }
  }

  /** A page of a roll on which {@code length} true mm along the roll can be printed. */
  static Sheet ofRoll(double rollWidth, double length, boolean turned, PrintCorrection correction) {
    double height = 2 * MARGIN + length * Math.max(1, correction.scaleY());
    return new Sheet(rollWidth, height, turned, correction);
  }

  /** The longest print along a roll, true mm. */
  static double longestOnRoll(PrintCorrection correction) {
    return (LONGEST_PAGE - 2 * MARGIN) / Math.max(1, correction.scaleY());
  }

  private double shortRoom() {
    return (paperWidth - 2 * MARGIN) / Math.max(1, correction.scaleX());
  }

  private double longRoom() {
    return (paperHeight - 2 * MARGIN) / Math.max(1, correction.scaleY());
  }

  /** What can be printed on, as the page is read. */
  double width() {
    return turned ? longRoom() : shortRoom();
  }

  double height() {
    return turned ? shortRoom() : longRoom();
  }

  /** Where the pattern goes: all but foot and side. */
  Bounds window() {
    return new Bounds(0, FOOT, width() - SIDE, height());
  }

  /** From true mm of the page as read to points of the page as filed. */
  Affine frame() {
    double kx = correction.scaleX() * POINTS;
    double ky = correction.scaleY() * POINTS;
    double left = (paperWidth * POINTS - shortRoom() * kx) / 2;
    double low = (paperHeight * POINTS - longRoom() * ky) / 2;
    return turned
        ? new Affine(0, ky, -kx, 0, paperWidth * POINTS - left, low)
        : new Affine(kx, 0, 0, ky, left, low);
  }
}
