package padwright.export.pdf;

import padwright.geometry.Bounds;

/**
 * One sheet's share of a piece, in the piece's mm.
 *
 * @param row from the top, 0 first
 * @param column from the left, 0 first
 * @param window what is printed on the sheet
 * @param cell what is left after trimming: windows end where the paper does, cells meet in the
 *     middle of the overlap
 */
record Tile(int row, int column, Bounds window, Bounds cell) {
  /** Row as letters, column as a number: A1 is top left. */
  String label() {
    return letters(row).toUpperCase(java.util.Locale.ROOT) + (column + 1);
  }

  /** a, b, ... z, aa, ab, ... */
  static String letters(int n) {
    return n < 26 ? String.valueOf((char) ('a' + n)) : letters(n / 26 - 1) + letters(n % 26);
  }
}
