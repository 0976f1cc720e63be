package padwright.export;

import padwright.design.Units;

/**
 * What every sheet of a part says about the part.
 *
 * @param jobTitle may be empty
 * @param quantity parts as drawn
 * @param mirrored more parts as the mirror image
 * @param date as it is to be printed
 * @param units to print sizes in
 */
public record PartHeader(
    String jobTitle,
    String partName,
    String partId,
    int quantity,
    int mirrored,
    String date,
    Units units) {}
