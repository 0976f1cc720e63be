package padwright.design;

/** The units a job's plain numbers are in. */
public enum Units {
  MM,
  INCH
}
