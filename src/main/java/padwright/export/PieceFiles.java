package padwright.export;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import padwright.pattern.PatternPiece;

/**
 * File names made of a part's id and what the file shows, such as {@code desk-rest-cover.svg}: the
 * letters a to z, figures and single hyphens only, so that they are safe on every machine. One
 * instance gives every name once, whatever the case a file system tells apart; a second of the same
 * name gets {@code -2}.
 */
public final class PieceFiles {
  /** With room for a suffix, below the 255 bytes that file systems allow. */
  private static final int LONGEST = 120;

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");
  private static final Pattern ENDS = Pattern.compile("^-+|-+$");

  private final Set<String> given = new HashSet<>();

  /** The name for a piece's pattern. */
  public static String name(String partId, PatternPiece piece) {
    return stem(partId, piece.id()) + ".svg";
  }

  /** A name that this instance has not given yet; {@code extension} without its point. */
  public String unique(String partId, String what, String extension) {
    String stem = stem(partId, what);
    String name = stem + "." + extension;
    for (int i = 2; !given.add(name); i++) {
      name = stem + "-" + i + "." + extension;
    }
    return name;
  }

  private static String stem(String partId, String what) {
    String part = safe(partId);
    String rest = safe(what);
    String both = part.isEmpty() ? rest : rest.isEmpty() ? part : part + "-" + rest;
    return both.isEmpty() ? "part" : both;
  }

  /** Accents fall off their letters; whatever else is not a letter or figure becomes a hyphen. */
  private static String safe(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
    String joined = OTHER.matcher(bare.toLowerCase(Locale.ROOT)).replaceAll("-");
    String plain = ENDS.matcher(joined).replaceAll("");
    return plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
  }
}
