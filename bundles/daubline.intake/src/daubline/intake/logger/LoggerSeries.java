package daubline.intake.logger;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.IntakeException;
import daubline.intake.KeptFile;
import daubline.intake.raw.RawFile;
import daubline.intake.raw.RawFiles;
import daubline.intake.raw.RawOptions;
import daubline.model.Channel;
import daubline.model.LoggerFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A logger's file as arrays, for charts: times, values, states of sensors and gaps. */
public final class LoggerSeries {

  private final double[] seconds;
  private final List<ChannelSeries> channels;
  private final List<Gap> gaps;
  private final List<Finding> findings;

  LoggerSeries(double[] seconds, List<ChannelSeries> channels, List<Gap> gaps, List<Finding> findings) {
    this.seconds = seconds;
    this.channels = List.copyOf(channels);
    this.gaps = List.copyOf(gaps);
    this.findings = List.copyOf(findings);
  }

  /**
   * Reads the file that an entry of a study describes.
   *
   * @param studyFolder the folder of the study
   * @param file the entry
   * @param variables the catalogue that tells the quantity of each channel
   * @throws IntakeException when the file is not there, lies outside the study, or cannot be read as described
   */
  public static LoggerSeries read(Path studyFolder, LoggerFile file, Variables variables) throws IntakeException {
    Path root = studyFolder.toAbsolutePath().normalize();
    Path path = root.resolve(file.getPath() == null ? "" : file.getPath()).normalize();
    if (!path.startsWith(root) || !Files.isRegularFile(path)) {
      throw new IntakeException(List.of(Finding.error("logger.missing", String.valueOf(file.getPath()),
          "the logger's file is not in the study's folder",
          "copy it back under this name, or import it again").about(file.getId(), "")));
    }
    LoggerLayout layout = layout(file, variables);
    RawFile raw = RawFiles.read(path, new RawOptions(Optional.empty(), Optional.of(layout.delimiter())));
    if (raw.sheets().isEmpty()) {
      throw new IntakeException(raw.findings());
    }
    LoggerParser parser = new LoggerParser(file.getPath(), layout);
    sayChanged(path, file).ifPresent(parser::report);
    return parser.parse(LoggerIntake.sheet(raw));
  }

  private static Optional<Finding> sayChanged(Path path, LoggerFile file) {
    try {
      return KeptFile.digest(Files.readAllBytes(path)).equals(file.getSha256()) ? Optional.empty()
          : Optional.of(Finding.warning("logger.changed", file.getPath(),
          "the file is not what was imported: its checksum differs",
          "restore the file as delivered, or import the new one").about(file.getId(), ""));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static LoggerLayout layout(LoggerFile file, Variables variables) {
    char delimiter = file.getDelimiter() == null || file.getDelimiter().isEmpty() ? ',' : file.getDelimiter().charAt(0);
    DecimalSign decimal = ",".equals(file.getDecimal()) ? DecimalSign.COMMA : DecimalSign.POINT;
    List<ChannelLayout> channels = file.getChannels().stream().filter(c -> c.getColumn() != null)
        .map(c -> channel(c, variables)).toList();
    return new LoggerLayout(delimiter, decimal, file.getHeaderRows() == null ? 0 : file.getHeaderRows(),
        file.getTimeColumn() == null ? 0 : file.getTimeColumn(),
        new TimeForm(file.getTimeFormat() == null ? "every 1 s" : file.getTimeFormat()), channels);
  }

  private static ChannelLayout channel(Channel channel, Variables variables) {
    String unitText = channel.getUnit() == null ? "" : channel.getUnit();
    String id = channel.getVariable() == null ? "" : channel.getVariable();
    Optional<Unit> unit = variables.find(id).map(Variable::quantity).flatMap(q -> Units.find(q, unitText));
    return new ChannelLayout(channel.getColumn(), channel.getName() == null ? "" : channel.getName(), id, unitText, unit);
  }

  /** Times of the rows, s since the first one. */
  public double[] seconds() {
    return seconds.clone();
  }

  /** The number of rows. */
  public int size() {
    return seconds.length;
  }

  /** The channels in the order of the file. */
  public List<ChannelSeries> channels() {
    return channels;
  }

  /** The channel of a variable. */
  public Optional<ChannelSeries> channel(String variable) {
    return channels.stream().filter(c -> c.layout().variable().equals(variable)).findFirst();
  }

  /** Times without rows; a line is not drawn across them. */
  public List<Gap> gaps() {
    return gaps;
  }

  /** What was noticed while it was read. */
  public List<Finding> findings() {
    return findings;
  }
}
