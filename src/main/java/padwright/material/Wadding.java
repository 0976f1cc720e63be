package padwright.material;

/**
 * A soft layer between foam and covering.
 *
 * @param loose thickness as sold, mm
 * @param compressed thickness under a taut covering, mm
 * @param areaWeight g/m2
 * @param rollWidth mm
 */
public record Wadding(
    String id,
    String name,
    double loose,
    double compressed,
    double areaWeight,
    double rollWidth,
    Sourced origin) {}
