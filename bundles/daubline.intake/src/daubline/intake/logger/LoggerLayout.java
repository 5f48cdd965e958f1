package daubline.intake.logger;

import daubline.base.DecimalSign;
import java.util.List;

/**
 * How a logger's file is laid out.
 *
 * @param delimiter the sign between cells
 * @param decimal the decimal sign
 * @param headerRows the number of rows before the first row of data
 * @param timeColumn the column of times, from 1; 0 when rows follow at a fixed interval
 * @param time how times are written
 * @param channels what the other columns hold
 */
public record LoggerLayout(char delimiter, DecimalSign decimal, int headerRows, int timeColumn, TimeForm time,
    List<ChannelLayout> channels) {

  public LoggerLayout {
    channels = List.copyOf(channels);
  }
}
