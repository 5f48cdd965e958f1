package daubline.intake.logger;

import daubline.base.DateOrder;
import daubline.intake.IntakeOptions;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import daubline.intake.raw.RawSheet;
import daubline.model.Trial;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * When a logger's first row was written: stated, told by the file, or put together from its time of day and the
 * trial's date.
 */
final class LoggerStart {

  private final Optional<String> at;

  LoggerStart(RawSheet sheet, LoggerLayout layout, Trial trial, IntakeOptions options) {
    RawRow first = sheet.rows().stream().filter(r -> r.number() > layout.headerRows() && !r.isEmpty())
        .findFirst().orElseThrow();
    Optional<String> stated = options.get("start");
    Optional<String> told = layout.timeColumn() == 0 ? Optional.empty() : told(first, layout, stated.orElse(trial.getOn()));
    this.at = stated.filter(s -> s.contains("T")).or(() -> told);
  }

  private static Optional<String> told(RawRow first, LoggerLayout layout, String trialDay) {
    String cell = first.cell(layout.timeColumn() - 1).text();
    if (!layout.time().isClock()) {
      return layout.time().start(cell);
    }
    Optional<String> day = first.cells().stream().map(RawCell::text).filter(DateOrder::isDate).findFirst()
        .flatMap(t -> DateOrder.decide(List.of(t)).flatMap(o -> o.read(t))).map(Object::toString)
        .or(() -> Optional.ofNullable(trialDay).filter(d -> d.matches("\\d{4}-\\d{2}-\\d{2}")));
    double seconds = layout.time().seconds(cell, layout.decimal()).orElse(0);
    String clock = LocalTime.ofSecondOfDay((long) seconds).toString();
    return day.map(d -> d + "T" + (clock.length() == 5 ? clock + ":00" : clock));
  }

  /** Date and time in ISO form; empty when nobody knows. */
  Optional<String> at() {
    return at;
  }
}
