package padwright.material;

/** How far a constant can be trusted. */
public enum Status {
  /** Read in a named document, with number and place. */
  PUBLISHED,
  /** Common practice, no source. */
  PRACTICE,
  /** From memory, to be verified. */
  MEMORY,
  /** Our own choice. */
  OWN,
  /** Measured by the maker. */
  MEASURED
}
