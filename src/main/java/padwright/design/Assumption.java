package padwright.design;

import padwright.material.Status;

/**
 * A default that was taken because the maker left a field out.
 *
 * @param field path in the part, such as {@code cover.turnUnder}
 * @param value as a maker would read it
 * @param reason why this value
 * @param status where it comes from
 */
public record Assumption(String field, String value, String reason, Status status) {}
