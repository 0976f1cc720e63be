package padwright.cover;

import padwright.design.WrappedPad.Treatment;

/**
 * What was decided for one corner.
 *
 * @param treatment never AUTO
 * @param fold for a sharp corner or for each pleat of a rounded one
 * @param pleats number of pleats, 0 where eased
 * @param pleatDepth depth of one of them, mm
 * @param notches number of V-notches on the back, 0 without
 * @param refused what was asked for and why it could not be had; empty where nothing was
 */
record CornerChoice(
    Treatment treatment,
    Fold fold,
    int pleats,
    double pleatDepth,
    int notches,
    String reason,
    CornerRefusal refused) {}
