package daubline.intake.logger;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Printed;
import daubline.base.SensorState;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import daubline.intake.raw.RawSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Reads the rows of a logger's file by its layout. */
final class LoggerParser {

  private static final double GAP_STEPS = 3;
  private static final int STATES = 100;

  private final String place;
  private final LoggerLayout layout;
  private final List<Finding> findings = new ArrayList<>();

  LoggerParser(String place, LoggerLayout layout) {
    this.place = place;
    this.layout = layout;
  }

  void report(Finding finding) {
    findings.add(finding);
  }

  LoggerSeries parse(RawSheet sheet) {
    List<RawRow> rows = sheet.rows().stream().filter(r -> r.number() > layout.headerRows() && !r.isEmpty()).toList();
    double[] all = times(rows);
    int[] timed = IntStream.range(0, all.length).filter(i -> !Double.isNaN(all[i])).toArray();
    List<RawRow> kept = Arrays.stream(timed).mapToObj(rows::get).toList();
    double[] seconds = Arrays.stream(timed).mapToDouble(i -> all[i] - all[timed[0]]).toArray();
    List<ChannelSeries> channels = layout.channels().stream().map(c -> channel(c, kept)).toList();
    return new LoggerSeries(seconds, channels, gaps(seconds), findings);
  }

  private double[] times(List<RawRow> rows) {
    double[] times = new double[rows.size()];
    OptionalDouble interval = layout.time().interval();
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < times.length; i++) {
      times[i] = interval.isPresent() ? i * interval.getAsDouble() : time(rows.get(i), before);
      if (!Double.isNaN(times[i])) {
        sayOrder(rows.get(i), times[i], before);
        before = times[i];
      }
    }
    return times;
  }

  private double time(RawRow row, double before) {
    RawCell cell = row.cell(layout.timeColumn() - 1);
    OptionalDouble seconds = layout.time().seconds(cell.text(), cell.isNumber() ? DecimalSign.POINT : layout.decimal());
    if (seconds.isEmpty()) {
      findings.add(Finding.warning("time.form", place + ", row " + row.number() + ", column " + layout.timeColumn(),
          "“" + cell.text() + "” is no time of the form " + layout.time().text() + "; the row is not drawn",
          "mend it in a copy of the file, or leave it: the raw file keeps it"));
      return Double.NaN;
    }
    return layout.time().onward(seconds.getAsDouble(), before);
  }

  private void sayOrder(RawRow row, double time, double before) {
    if (time < before) {
      findings.add(Finding.error("time.backwards", place + ", row " + row.number(), "the time goes back by "
          + Printed.number(before - time) + " s",
          "the logger's clock was set, or two runs stand in one file: part the file there and import each part"));
    }
  }

  private List<Gap> gaps(double[] seconds) {
    double[] steps = new double[Math.max(0, seconds.length - 1)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = seconds[i + 1] - seconds[i];
    }
    double[] sorted = steps.clone();
    Arrays.sort(sorted);
    double usual = sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    List<Gap> gaps = new ArrayList<>();
    for (int i = 0; i < steps.length; i++) {
      if (usual > 0 && steps[i] > GAP_STEPS * usual) {
        gaps.add(new Gap(seconds[i], seconds[i + 1]));
      }
    }
    return gaps;
  }

  private ChannelSeries channel(ChannelLayout channel, List<RawRow> rows) {
    double[] values = new double[rows.size()];
    byte[] states = new byte[rows.size()];
    List<String> words = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      RawCell cell = rows.get(i).cell(channel.column() - 1);
      Optional<Double> number = cell.isEmpty() ? Optional.empty() : Numbers.parse(cell.text(), cell.isNumber()
          ? DecimalSign.POINT : layout.decimal());
      values[i] = number.map(channel::canonical).orElse(Double.NaN);
      if (number.isEmpty() && !cell.isEmpty()) {
        states[i] = state(channel, cell.text(), words, rows.get(i).number());
      }
    }
    return new ChannelSeries(channel, values, states, List.copyOf(words));
  }

  private byte state(ChannelLayout channel, String text, List<String> words, int row) {
    Optional<SensorState> known = SensorState.find(text);
    String word = known.map(SensorState::word).orElse(text);
    int index = words.indexOf(word);
    if (index < 0 && words.size() < STATES) {
      words.add(word);
      index = words.size() - 1;
      if (known.isEmpty()) {
        findings.add(Finding.warning("logger.text", place + ", row " + row + ", column " + channel.column() + " ("
            + channel.name() + ")",
            "“" + text + "” is neither a number nor a known state of a sensor; it is kept as a state of its own",
            "check the decimal sign; known states are open, saturated, removed and fault"));
      }
    }
    return (byte) (index < 0 ? words.size() : index + 1);
  }
}
