package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import daubline.model.Reading;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Columns of tables whose rows each name a variable of their own, with its value beside it.
 *
 * @param desk where it is written
 * @param asked which variables are offered
 */
record OwnVariable(Desk desk, Predicate<Variable> asked) {

  /** The variables on offer. */
  List<Variable> offered() {
    return desk.variables().all().stream().filter(asked).toList();
  }

  /** The variable of a row; empty when none is chosen or the catalogue has none. */
  Optional<Variable> of(Reading reading) {
    return desk.variables().find(Columns.text(reading.getVariable()));
  }

  /** The column in which the variable is chosen by its name. */
  <R extends Reading> EntryColumn<R> property(double share) {
    return EntryColumn.<R>typed("property", share, r -> of(r).map(desk.words()::told).map(Variable::name).orElse(Columns.text(r.getVariable())), this::readProperty)
        .offering(r -> offered().stream().map(desk.words()::told).map(Variable::name).toList());
  }

  private <R extends Reading> Entry<R> readProperty(String typed) {
    Optional<Variable> meant = offered().stream().filter(v -> desk.words().isMeant(v, typed)).findFirst();
    return meant.map(v -> Entry.<R>of(r -> r.setVariable(v.id())))
        .orElseGet(() -> Entry.wrong("value.variable", "“" + typed + "” is no property that is asked here", "choose one of the list"));
  }

  /**
   * The column of the value.
   *
   * @param into the reading that a value is put into; may be another one than that of the row
   */
  <R extends Reading> EntryColumn<R> value(double share, UnaryOperator<R> into) {
    return EntryColumn.<R>typed("value", share, r -> r.getKind() == null ? "" : of(r).map(v -> Columns.print(desk, r, v)).orElse(Columns.text(r.getTyped())),
        typed -> Entry.of(r -> of(r).ifPresent(v -> put(into.apply(r), v, typed))))
        .offering(r -> r == null ? List.of() : of(r).map(v -> Columns.offered(desk, v)).orElse(List.of())).doubting(r -> r.getKind() == null ? Optional.empty()
            : of(r).flatMap(v -> Columns.odd(r, v)));
  }

  private void put(Reading reading, Variable variable, String typed) {
    Columns.<Reading>value(desk, variable, typed, (nothing, change) -> {
      if (change != null) {
        change.accept(reading);
      }
    }).change().accept(reading);
  }

  /** Why a text cannot be the value of a row; its variable must be chosen first. */
  Optional<Finding> refusal(Reading row, String text) {
    if (row == null || of(row).isEmpty()) {
      return Optional.of(Finding.error("value.property", "", "no property is chosen for this value", "choose the property first"));
    }
    Entry<Object> entry = text.isBlank() ? Entry.wrong("value.empty", "the value is empty", "type one, a word such as “not preserved”, or remove the row")
        : Columns.value(desk, of(row).get(), text, (nothing, change) -> { });
    return entry.isRead() ? Optional.empty() : Optional.of(entry.complaint());
  }
}
