package padwright.measure;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the known names nearest to one that is not known, for a helpful refusal. */
public final class Nearest {
  private Nearest() {}

  /** Up to {@code most} known names, nearest first by edit distance, ties by name. */
  public static List<String> names(String asked, Collection<String> known, int most) {
    String a = asked.toLowerCase(Locale.ROOT);
    return known.stream()
        .sorted(
            Comparator.comparingInt((String k) -> distance(a, k.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .limit(most)
        .toList();
  }

  /** Levenshtein distance: insertions, deletions and replacements that turn one into the other. */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
