package padwright.design;

/** One padded part of a job. */
public sealed interface PaddedPart permits WrappedPad {
  /** Short name, unique in the job; file names are made from it. */
  String id();

  /** What the maker calls it. */
  String name();

  /** How many as drawn. */
  int quantity();

  /** How many more as the mirror image. */
  int mirrored();
}
