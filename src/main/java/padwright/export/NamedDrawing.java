package padwright.export;

/**
 * A drawing and what it is called among those of its part, however the drawing's words change.
 *
 * @param name lower case letters, figures and single hyphens, such as {@code corner-double-pleat}
 */
public record NamedDrawing(String name, Drawing drawing) {}
