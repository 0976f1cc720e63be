package padwright.drawing;

import padwright.geometry.Affine;

/** One function of an SVG transform list (SVG 1.1, 7.6). */
final class TransformWord {
  private static final int MOST_NUMBERS = 6;

  private TransformWord() {}

  static Affine read(NumberScanner in) {
    String word = in.word();
    in.expect('(');
    double[] n = new double[MOST_NUMBERS];
    int count = 0;
    while (count < MOST_NUMBERS && in.numberFollows()) {
      n[count++] = in.number();
    }
    in.expect(')');
    return map(word, n, count, in);
  }

  private static Affine map(String word, double[] n, int count, NumberScanner in) {
    String key = word + count;
    return switch (key) {
      case "matrix6" -> new Affine(n[0], n[1], n[2], n[3], n[4], n[5]);
      case "translate1", "translate2" -> Affine.moved(n[0], n[1]);
      case "scale1" -> Affine.scale(n[0], n[0]);
      case "scale2" -> Affine.scale(n[0], n[1]);
      case "rotate1" -> Affine.turn(Math.toRadians(n[0]));
      case "rotate3" ->
          Affine.moved(n[1], n[2])
              .after(Affine.turn(Math.toRadians(n[0])))
              .after(Affine.moved(-n[1], -n[2]));
      case "skewX1" -> new Affine(1, 0, Math.tan(Math.toRadians(n[0])), 1, 0, 0);
      case "skewY1" -> new Affine(1, Math.tan(Math.toRadians(n[0])), 0, 1, 0, 0);
      default ->
          throw in.refuse("there is no transform of " + count + " numbers that is called that way");
    };
  }
}
