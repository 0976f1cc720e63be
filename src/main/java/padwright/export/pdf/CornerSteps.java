package padwright.export.pdf;

import padwright.cover.CornerPlan;

/** What the order of work says of one corner: how it is made, with its numbers. */
final class CornerSteps {
  private CornerSteps() {}

  static String of(CornerPlan c) {
    String relief =
        c.reliefStop() > 0
            ? " The relief cut's raw edge stays "
                + Sizes.mm(c.reliefStop())
                + " mm behind the fold that hides it."
            : "";
    String over = c.over().isEmpty() ? "" : ", the " + c.over() + " on top";
    return switch (c.treatment()) {
      case AUTO -> throw new IllegalArgumentException("a corner plan has a treatment");
      case SINGLE_PLEAT -> "single pleat" + over + ", its fold on the arris." + relief;
      case DOUBLE_PLEAT -> "double pleat, both folds meeting on the arris." + relief;
      case MITRED_END -> "mitred end" + over + ", folded at the corner." + relief;
      case EASED -> "ease the fullness in evenly, no fold on the face." + relief;
      case PLEATS ->
          c.pleats()
              + " even pleats, "
              + Sizes.mm(c.pleatDepth())
              + " mm deep each"
              + apart(c)
              + "."
              + relief;
      case GUSSET ->
          "hollow corner: the gusset's crease on the arris, its halves turned under apart.";
      case CLIPS ->
          c.pleats() == 1
              ? "1 clip from the cut line" + stop(c) + "."
              : c.pleats() + " clips from the cut line" + apart(c) + stop(c) + ".";
      case NOTCHES ->
          c.pleats()
              + " notches"
              + apart(c)
              + ", "
              + Sizes.mm(c.row().mouth())
              + " mm wide at the cut line"
              + stop(c)
              + "; their mouths close on the back."
              + relief;
    };
  }

  private static String apart(CornerPlan c) {
    return c.row().spacing() > 0 && c.pleats() > 1
        ? ", " + Sizes.mm(c.row().spacing()) + " mm apart along the base's edge"
        : "";
  }

  private static String stop(CornerPlan c) {
    return c.row().stop() > 0
        ? ", stopping " + Sizes.mm(c.row().stop()) + " mm short of the back arris"
        : ", stopping short of the back arris";
  }
}
