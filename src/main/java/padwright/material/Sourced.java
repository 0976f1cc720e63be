package padwright.material;

/** Where a row of the catalogue comes from: the document or practice, and how far it goes. */
public record Sourced(String source, Status status) {}
