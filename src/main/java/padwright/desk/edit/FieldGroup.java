package padwright.desk.edit;

import java.util.List;
import java.util.Optional;

/**
 * Fields that belong to one thing a maker can point at.
 *
 * @param member what it is, such as {@code base}, {@code foam[1]} or {@code cover}: the place its
 *     fields begin with, or one of a kind
 * @param title in trade words
 * @param list where it is an entry of a list, that list's place and its number there
 */
public record FieldGroup(
    String member, String title, List<PartField> fields, Optional<Entry> list) {
  public FieldGroup {
    fields = List.copyOf(fields);
  }

  FieldGroup(String member, String title, List<PartField> fields) {
    this(member, title, fields, Optional.empty());
  }

  /**
   * An entry of a list.
   *
   * @param least how few entries the list may have
   */
  public record Entry(String list, int number, int least) {}
}
