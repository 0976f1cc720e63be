package padwright.shape;

import padwright.geometry.Path;

/**
 * The covering pulled tight over a section: from the flat top over the edge, down the side, round
 * the back arris and in along the back. Section coordinates, mm.
 *
 * @param hull the surface it lies on
 * @param neutral its neutral line, half the covering's thickness outside the hull; its first point
 *     is at {@code x = startX} on the flat top and its last at {@code x = -turnUnder} on the back
 * @param startX where the path starts, 0 or negative: the last place on the flat top at or inside
 *     the base outline's line
 * @param developed D: length of the neutral line less the start's distance inside the outline
 * @param backStart path length, counted as D is, at which the covering lies flat on the back
 */
public record TautPath(
    Path hull, Path neutral, double startX, double developed, double backStart) {}
