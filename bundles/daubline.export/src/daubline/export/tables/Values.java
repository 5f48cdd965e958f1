package daubline.export.tables;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import daubline.base.ValueKind;
import daubline.engine.inference.Statement;
import daubline.export.Cell;
import java.util.List;
import java.util.stream.Collectors;

/** Cells from statements. */
final class Values {

  private Values() {
  }

  /** What is stated of one variable: the picked statement, or the only one, or all of them side by side. */
  static Cell cell(List<Statement> statements, Unit unit) {
    if (statements.isEmpty()) {
      return Cell.missing(ValueKind.NOT_RECORDED);
    }
    List<Statement> picked = statements.stream().filter(Statement::picked).toList();
    List<Statement> shown = picked.isEmpty() ? statements : picked;
    if (shown.size() == 1) {
      return Cell.amount(shown.get(0).amount(), unit, shown.get(0).trail());
    }
    String text = shown.stream().map(s -> Printed.amount(s.amount(), unit)).distinct().collect(Collectors.joining("; "));
    List<Trail> trails = shown.stream().map(Statement::trail).toList();
    return Cell.text(text).from(new Trail("several statements", text, "", trails));
  }

  /** The one number among statements: the picked one or the only one; a missing amount when there is none. */
  static Amount number(List<Statement> statements) {
    List<Statement> numbers = statements.stream().filter(s -> s.amount().isNumber()).toList();
    return numbers.stream().filter(Statement::picked).findFirst().or(() -> numbers.stream().findFirst()).map(Statement::amount)
        .orElse(Amount.of(ValueKind.NOT_RECORDED));
  }

  /** The standard uncertainty of an amount, for a range that of a rectangular distribution (JCGM 100:2008, 4.3.7); 0 when none is stated. */
  static double sigma(Amount amount) {
    return amount.kind() == ValueKind.RANGE ? (amount.high() - amount.low()) / Math.sqrt(12) : amount.sigmaOr(0);
  }
}
