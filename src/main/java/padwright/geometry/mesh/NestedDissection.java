package padwright.geometry.mesh;

/**
 * An order in which to eliminate the vertices of a mesh so that the factor of its Laplacian fills
 * in little: the vertices are cut in two at the median of their widest coordinate, those of the one
 * half that touch the other are the separator and come last, and each half is ordered likewise
 * (George, "Nested dissection of a regular finite element mesh", 1973; the cut by coordinates is
 * Miller, Teng, Thurston and Vavasis, "Geometric separators", 1998, in its simplest form).
 */
final class NestedDissection {
  /** A part of so few vertices is left as it is: cutting it saves nothing any more. */
  private static final int SMALLEST = 12;

  private final double[] xyz;
  private final int[] start;
  private final int[] neighbours;
  private final int[] part;
  private final int[] part2;
  private final int[] region;
  private int regions;

  private NestedDissection(double[] xyz, int[] start, int[] neighbours) {
    this.xyz = xyz;
    this.start = start;
    this.neighbours = neighbours;
    this.part = new int[xyz.length / 3];
    this.part2 = new int[xyz.length / 3];
    this.region = new int[xyz.length / 3];
  }

  /**
   * All vertices, those marked {@code last} at the end.
   *
   * @param xyz coordinates of each vertex in turn
   * @param start where each vertex's neighbours start in {@code neighbours}; one entry more at the
   *     end
   */
  static int[] order(double[] xyz, int[] start, int[] neighbours, boolean[] last) {
    NestedDissection d = new NestedDissection(xyz, start, neighbours);
    int n = last.length;
    int first = 0;
    for (int v = 0; v < n; v++) {
      if (!last[v]) {
        d.part[first++] = v;
      }
    }
    int at = first;
    for (int v = 0; v < n; v++) {
      if (last[v]) {
        d.part[at++] = v;
      }
    }
    d.cut(0, first);
    d.cut(first, n);
    return d.part;
  }

  /** Orders what lies in {@code part} from {@code from} up to {@code to}. */
  private void cut(int from, int to) {
    if (to - from <= SMALLEST) {
      return;
    }
    int middle = (from + to) >>> 1;
    select(from, to - 1, middle, widestAxis(from, to));
    int lower = ++regions;
    int upper = ++regions;
    for (int i = from; i < to; i++) {
      region[part[i]] = i < middle ? lower : upper;
    }
    int border = touching(from, middle, upper);
    int other = touching(middle, to, lower);
    // The shorter of the two borders is the separator.
    boolean lowerGives = border <= other;
    int mark = lowerGives ? upper : lower;
    int giveFrom = lowerGives ? from : middle;
    int giveTo = lowerGives ? middle : to;
    int separator = lowerGives ? border : other;
    int kept = 0;
    int gone = 0;
    for (int i = giveFrom; i < giveTo; i++) {
      if (touches(part[i], mark)) {
        part2[to - separator + gone++] = part[i];
      } else {
        part2[from + kept++] = part[i];
      }
    }
    int keepFrom = lowerGives ? middle : from;
    int keepTo = lowerGives ? to : middle;
    System.arraycopy(part, keepFrom, part2, from + kept, keepTo - keepFrom);
    System.arraycopy(part2, from, part, from, to - from);
    if (kept == 0 || separator == to - from) {
      return;
    }
    cut(from, from + kept);
    cut(from + kept, to - separator);
    cut(to - separator, to);
  }

  private int touching(int from, int to, int mark) {
    int count = 0;
    for (int i = from; i < to; i++) {
      count += touches(part[i], mark) ? 1 : 0;
    }
    return count;
  }

  private boolean touches(int v, int mark) {
    for (int i = start[v]; i < start[v + 1]; i++) {
      if (region[neighbours[i]] == mark) {
        return true;
      }
    }
    return false;
  }

  private int widestAxis(int from, int to) {
    int widest = 0;
    double most = -1;
    for (int axis = 0; axis < 3; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = from; i < to; i++) {
        double c = xyz[3 * part[i] + axis];
        low = Math.min(low, c);
        high = Math.max(high, c);
      }
      if (high - low > most) {
        most = high - low;
        widest = axis;
      }
    }
    return widest;
  }

  /** Brings the k-th by the axis to its place, smaller before it (Hoare's selection). */
  private void select(int from, int to, int k, int axis) {
    int low = from;
    int high = to;
    while (low < high) {
      int pivot = part[(low + high) >>> 1];
      int i = low;
      int j = high;
      while (i <= j) {
        while (before(part[i], pivot, axis)) {
          i++;
        }
        while (before(pivot, part[j], axis)) {
          j--;
        }
        if (i <= j) {
          int swap = part[i];
          part[i++] = part[j];
          part[j--] = swap;
        }
      }
      if (k <= j) {
        high = j;
      } else if (k >= i) {
        low = i;
      } else {
        return;
      }
    }
  }

  /**
   * By the coordinate, and by the number where that is the same: one order, whatever came first.
   */
  private boolean before(int v, int w, int axis) {
    double a = xyz[3 * v + axis];
    double b = xyz[3 * w + axis];
    return a < b || (a == b && v < w);
  }
}
