package padwright.export;

import java.util.Locale;

/** The plain word for a constant, as files carry it. */
final class Words {
  private Words() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
