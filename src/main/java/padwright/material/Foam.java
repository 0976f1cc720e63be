package padwright.material;

import java.util.List;

/**
 * A foam.
 *
 * @param density kg/m3
 * @param hardness indentation hardness at 40 %, N (ISO 2439 method); an index, not a design value
 * @param firm whether its edge keeps its shape without overhang
 * @param sheets thicknesses sold, mm
 */
public record Foam(
    String id,
    String name,
    double density,
    double hardness,
    boolean firm,
    List<Double> sheets,
    Sourced origin) {
  public Foam {
    sheets = List.copyOf(sheets);
  }
}
