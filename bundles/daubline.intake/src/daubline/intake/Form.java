package daubline.intake;

import daubline.base.Variables;
import java.util.List;
import java.util.Optional;

/** The columns of one target, and how a row of it gets into a study. */
interface Form {

  /** What it is the form of. */
  Target target();

  /** One sentence that says what a row is and how a row is recognised again. */
  String explanation();

  /** Every column by name, in the order of the explanation. */
  List<FormColumn> columns(Variables variables);

  /** The columns that a template writes; all of them unless there are too many to fill. */
  default List<FormColumn> template(Variables variables) {
    return columns(variables);
  }

  /** The column that a heading names; a form may know whole families of headings. */
  default Optional<FormColumn> column(Heading heading, Variables variables) {
    return columns(variables).stream().filter(c -> Heading.key(c.id()).equals(heading.key())).findFirst();
  }

  /** What may help with a heading that names no column; empty when nothing better than the nearest name is known. */
  default Optional<String> hint(Heading heading, Variables variables) {
    return Optional.empty();
  }

  /** Whether tables come from laboratories, each with a layout of its own. */
  default boolean isOfLaboratories() {
    return false;
  }

  /** What makes two rows speak of the same thing; rows of one file with the same key are refused or passed over. */
  String key(Row row);

  /** Writes a row into a study, changing only what differs; what is wrong goes to the row's findings. */
  void write(Row row, Draft draft);
}
