package padwright.desk.model;

import java.util.Optional;
import padwright.design.Finding;
import padwright.desk.edit.Remedy;

/**
 * A line of the list of findings.
 *
 * @param sentence message and what to do
 * @param place of the field it is about
 * @param remedy a change that was tried and clears it; empty until one is found
 */
public record FindingRow(Finding finding, String sentence, String place, Optional<Remedy> remedy) {}
