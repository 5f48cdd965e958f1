package daubline.intake;

import daubline.base.DateOrder;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decides, once for a whole file, the decimal sign of its texts and the order of its dates; asks where the file does
 * not tell.
 */
public final class FileSigns {

  private static final Pattern DECIMAL = Pattern.compile("(?<![\\d.,])\\d*[.,]\\d+(?:[.,]\\d+)*(?![\\d.,])");

  private final String place;
  private final IntakeOptions options;
  private final List<Finding> findings;

  /** Asks in the name of a place; what has to be asked is added to the findings. */
  public FileSigns(String place, IntakeOptions options, List<Finding> findings) {
    this.place = place;
    this.options = options;
    this.findings = findings;
  }

  DecimalSign decimal(List<Bound> columns, List<RawRow> rows) {
    return decimalOf(texts(columns.stream().filter(b -> b.column().holdsNumbers()).toList(), rows));
  }

  /** The decimal sign that texts share, stated or found; a point, with an error noted, when the texts do not tell. */
  public DecimalSign decimalOf(List<String> cells) {
    if (options.decimal().isPresent()) {
      return options.decimal().get();
    }
    List<String> numbers = cells.stream().filter(c -> !DateOrder.isDate(c)).flatMap(c -> numbers(c).stream()).toList();
    Optional<DecimalSign> sign = Numbers.decide(numbers);
    if (sign.isPresent()) {
      return sign.get();
    }
    Optional<String> point = telling(numbers, DecimalSign.POINT);
    Optional<String> comma = telling(numbers, DecimalSign.COMMA);
    if (point.isPresent() && comma.isPresent()) {
      findings.add(Finding.error("number.mixed", place, "“" + point.get() + "” uses a point and “" + comma.get()
          + "” a comma as decimal sign",
          "write all numbers with one decimal sign, or state it by decimal=point or decimal=comma and mend the others"));
    } else {
      String example = numbers.stream().filter(Numbers::isAmbiguous).findFirst().orElse("");
      findings.add(Finding.error("number.ambiguous", place, "“" + example
          + "” may be a decimal or a number of thousands, and no other number of the file tells",
          "state it by decimal=point or decimal=comma"));
    }
    return DecimalSign.POINT;
  }

  private static List<String> numbers(String cell) {
    List<String> numbers = new ArrayList<>();
    Matcher m = DECIMAL.matcher(cell);
    while (m.find()) {
      numbers.add(m.group());
    }
    return numbers;
  }

  private static Optional<String> telling(List<String> numbers, DecimalSign sign) {
    return numbers.stream().filter(n -> n.indexOf(sign.sign()) >= 0 && !Numbers.isAmbiguous(n) && Numbers.parse(n,
        sign).isPresent()).findFirst();
  }

  DateOrder dates(List<Bound> columns, List<RawRow> rows) {
    return datesOf(texts(columns.stream().filter(b -> b.column().content() == FormColumn.Content.DATE).toList(), rows));
  }

  /** The order that dates share, stated or found; year first, with an error noted, when the dates do not tell. */
  public DateOrder datesOf(List<String> cells) {
    Optional<DateOrder> stated = options.get("dates").flatMap(DateOrder::find);
    if (stated.isPresent()) {
      return stated.get();
    }
    List<String> dates = cells.stream().filter(DateOrder::isDate).toList();
    return DateOrder.decide(dates).orElseGet(() -> {
      findings.add(Finding.error("date.ambiguous", place, "“" + dates.get(0)
          + "” may be day first or month first, and the file does not tell",
          "state it by dates=dmy or dates=mdy, or write dates as 2031-08-16"));
      return DateOrder.YMD;
    });
  }

  private static List<String> texts(List<Bound> columns, List<RawRow> rows) {
    List<String> texts = new ArrayList<>();
    for (RawRow row : rows) {
      for (Bound column : columns) {
        RawCell cell = row.cell(column.index());
        if (cell.form() == RawCell.Form.TEXT && !cell.isEmpty()) {
          texts.add(cell.text());
        }
      }
    }
    return texts;
  }
}
