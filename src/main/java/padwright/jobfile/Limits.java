package padwright.jobfile;

import padwright.measure.Length;

/**
 * What a job file may hold, mm unless said. Wide of anything a workshop makes; they catch a slipped
 * decimal point or unit, and keep a hostile file from asking for millions of pleats or staples.
 */
final class Limits {
  static final double LARGEST = Length.LARGEST;

  /** Smaller than any part that can be wrapped; catches metres written for mm. */
  static final double LEAST_OUTLINE = 1;

  /** A board under this is card or veneer, and no staple holds in it. */
  static final double LEAST_BOARD = 1;

  static final double MOST_BOARD = 100;

  static final double LEAST_FOAM = 0.5;
  static final double MOST_FOAM = 500;
  static final int MOST_LAYERS = 20;

  /** A rounding smaller than this cannot be cut; "square" says it better. */
  static final double LEAST_EDGE = 0.1;

  /** A smaller corner radius than this cannot be sawn or sanded on purpose; 0 is a sharp corner. */
  static final double LEAST_RADIUS = 0.1;

  /** More points than any drawn outline of a pad needs; keeps a hostile file from taking long. */
  static final int MOST_POINTS = 2_000;

  /** Arcs and lines that the curves of one outline may come to. */
  static final int MOST_PIECES = 20_000;

  /**
   * A straight side shorter than this is a slip: too short to saw on purpose, yet a corner to fold.
   */
  static final double NEAREST_POINTS = 0.1;

  /** The same of a bowed side, whose chord says less: a whole circle's may be this short. */
  static final double NEAREST_CURVED = 0.01;

  /** Flatter than this, an arc over 10 m leaves its chord by less than 0.05 mm. */
  static final double LEAST_BULGE = 1e-5;

  /** All but a whole circle: what is left open is 2 degrees of the turn. */
  static final double MOST_BULGE = 100;

  /** A free outline that holds less than this, mm2, has no room for anything. */
  static final double LEAST_AREA = LEAST_OUTLINE * LEAST_OUTLINE;

  static final int MOST_CUT_OUTS = 50;
  static final int MOST_RUNS = 200;

  static final double LEAST_WADDING = 0.05;
  static final double MOST_WADDING = 100;

  static final double MOST_COVERING = 20;

  /** A shorter passage from one edge into another is a step, not a passage. */
  static final double LEAST_PASSAGE = 10;

  /** Shorter than this nothing can be stapled; the engine's own rules ask for more. */
  static final double LEAST_TURN_UNDER = 1;

  static final double MOST_TURN_UNDER = 1000;

  /** Closer staples would touch: the narrowest crown sold is wider. Also bounds their number. */
  static final double LEAST_SPACING = 3;

  static final double MOST_SPACING = 500;

  static final double LEAST_LEG = 1;
  static final double MOST_LEG = 100;
  static final double MOST_SCREW = 300;

  /** Bounds the number of pleats at a corner. */
  static final double LEAST_PLEAT = 0.5;

  static final double MOST_PLEAT = 200;

  static final double LEAST_HOLE = 0.5;
  static final int MOST_HOLES = 200;

  /** N per mm: a thousand times a hand's pull on a metre of covering. */
  static final double MOST_PULL = 1000;

  /** A covering stretched by more than this would not come back. */
  static final double MOST_STRETCH = 0.3;

  /**
   * How far a caliper may differ from the nominal thickness: sold boards stay within a fifth, and
   * thin ones within a millimetre, so that more is a wrong board or a slip.
   */
  static final double MEASURED_SHARE = 0.2;

  static final double MEASURED_LEAST = 1;

  static final int MOST_PARTS = 10_000;
  static final int MOST_QUANTITY = 10_000;
  static final int LONGEST_ID = 60;
  static final int LONGEST_TEXT = 120;

  /** Slack for sums of lengths that should just fit, far below a knife's width. */
  static final double ROUNDING = 1e-9;

  private Limits() {}

  /** How far foam may be stepped back, so that some of it is left. */
  static double mostStep(double shorterSide) {
    return shorterSide / 2 - LEAST_OUTLINE / 2;
  }
}
