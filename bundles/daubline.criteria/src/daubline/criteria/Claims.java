package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.Statement;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What one side claims about one property: the claim a person picked, or else every claim that can be compared. The
 * order is that of the values, so the order of rows changes nothing.
 *
 * @param usable claims that can be compared, without repetitions
 * @param all every claim, for the trail
 * @param side whose they are
 */
record Claims(List<Statement> usable, List<Statement> all, Side side) {

  private static final Comparator<Amount> BY_VALUE = Comparator.comparing(Amount::kind).thenComparing(Amount::value)
      .thenComparing(Amount::low).thenComparing(Amount::high).thenComparing(Amount::sigma).thenComparing(Amount::category);

  static Claims of(List<Statement> statements, Side side, Predicate<Amount> fits) {
    if (statements.size() <= 1) {
      boolean usable = statements.size() == 1 && fits.test(statements.get(0).amount());
      return new Claims(usable ? statements : List.of(), statements, side);
    }
    return ordered(statements, side, fits);
  }

  private static Claims ordered(List<Statement> statements, Side side, Predicate<Amount> fits) {
    List<Statement> picked = statements.stream().filter(Statement::picked).toList();
    List<Statement> considered = (picked.isEmpty() ? statements : picked).stream()
        .sorted(Comparator.comparing(Statement::amount, BY_VALUE).thenComparing(Statement::id)).toList();
    List<Statement> usable = considered.stream().filter(s -> fits.test(s.amount()))
        .collect(Collectors.toMap(Statement::amount, s -> s, (a, b) -> a, LinkedHashMap::new)).values().stream().toList();
    return new Claims(usable, considered, side);
  }

  boolean isEmpty() {
    return usable.isEmpty();
  }

  /** Whether it could have been recovered: not when every claim says that it is not preserved. */
  boolean isRecoverable() {
    return all.isEmpty() || all.stream().anyMatch(s -> s.amount().kind() != ValueKind.NOT_PRESERVED);
  }

  /** Why nothing can be compared. */
  String missing() {
    if (all.isEmpty()) {
      return side.word() + " says nothing about it";
    }
    if (side == Side.EVIDENCE && !isRecoverable()) {
      OptionalDouble limit = all.stream().mapToDouble(Statement::preservationLimit).filter(l -> !Double.isNaN(l)).max();
      return limit.isPresent() ? "above " + Printed.millimetres(limit.getAsDouble()) + " nothing of it is preserved, nobody could have recovered it"
          : "it is not preserved, nobody could have recovered it";
    }
    return side.word() + " says: " + all.stream().map(s -> s.amount().kind().word()).distinct().collect(Collectors.joining(", "));
  }

  /** The trail of every claim under a heading. */
  Trail trail(String value) {
    String what = side == Side.EVIDENCE ? "Evidence" : "As found";
    return new Trail(what, value, "", all.stream().map(Statement::trail).toList());
  }
}
