package daubline.intake.logger;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Plausibility;
import daubline.base.Printed;
import daubline.base.Unit;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.intake.KeptFile;
import daubline.intake.Mappings;
import daubline.model.Channel;
import daubline.model.LoggerFile;
import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a logger's file would be taken into a trial, with everything that was noticed; nothing is changed until it is
 * applied.
 */
public final class LoggerPreview {

  private final String place;
  private final LoggerLayout layout;
  private final LoggerSeries series;
  private final LoggerStart start;
  private final String trialId;
  private final IntakeOptions options;
  private final KeptFile kept;
  private final List<Finding> findings;
  private final boolean changesAnything;

  private LoggerPreview(String place, List<Finding> findings) {
    this.place = place;
    this.layout = null;
    this.series = null;
    this.start = null;
    this.trialId = "";
    this.options = IntakeOptions.none();
    this.kept = null;
    this.findings = sorted(findings);
    this.changesAnything = false;
  }

  LoggerPreview(String place, LoggerLayout layout, LoggerSeries series, LoggerStart start, String trialId,
      IntakeOptions options, KeptFile kept,
      List<Finding> findings, Variables variables, Study study) {
    this.place = place;
    this.layout = layout;
    this.series = series;
    this.start = start;
    this.trialId = trialId;
    this.options = options;
    this.kept = kept;
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(series.findings());
    sayStart(all);
    sayGaps(all);
    series.channels().forEach(c -> sayImplausible(c, variables, all));
    this.findings = sorted(all);
    this.changesAnything = changes(study);
  }

  /** A file that cannot be taken over. */
  static LoggerPreview refused(String place, List<Finding> findings) {
    return new LoggerPreview(place, findings);
  }

  private static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().sorted(Comparator.comparing(Finding::severity)).toList();
  }

  private void sayStart(List<Finding> all) {
    if (start.at().isEmpty()) {
      all.add(Finding.warning("logger.start", place, "nobody knows on what day and time the first row was written",
          "state it by start=2031-08-16T09:41:15+01:00; until then the log cannot stand beside the run log"));
    }
  }

  private void sayGaps(List<Finding> all) {
    series.gaps().stream().max(Comparator.comparingDouble(Gap::length)).ifPresent(longest ->
        all.add(Finding.note("logger.gap", place,
        series.gaps().size() + " gap(s) without rows, the longest of " + Printed.number(longest.length()) + " s after "
        + Printed.number(longest.from()) + " s",
        "nothing to do; no line is drawn across a gap")));
  }

  private void sayImplausible(ChannelSeries channel, Variables variables, List<Finding> all) {
    Optional<Variable> variable = variables.find(channel.layout().variable());
    if (variable.isEmpty()) {
      return;
    }
    Unit unit = channel.layout().unit().orElse(variable.get().unit());
    List<Finding> odd = new ArrayList<>();
    int count = 0;
    for (int row = 0; row < series.size(); row++) {
      if (!Double.isNaN(channel.value(row)) && !variable.get().isPlausible(channel.value(row))) {
        count++;
        if (odd.isEmpty()) {
          Plausibility.check(variable.get(), Amount.exact(channel.value(row)), unit).ifPresent(odd::add);
        }
      }
    }
    for (Finding first : odd) {
      all.add(Finding.warning(first.code(), place + ", column " + channel.layout().column() + " ("
          + channel.layout().name() + ")",
          count + " of " + series.size() + " values are odd; the first: " + first.what(), first.remedy()).about("",
          variable.get().id()));
    }
  }

  /** How the file is laid out; empty when it cannot be taken over. */
  public Optional<LoggerLayout> layout() {
    return Optional.ofNullable(layout);
  }

  /** The content as it would be drawn; empty when it cannot be taken over. */
  public Optional<LoggerSeries> series() {
    return Optional.ofNullable(series);
  }

  /** Date and time of the first row by the logger's own clock; empty when unknown. */
  public Optional<String> startAt() {
    return start == null ? Optional.empty() : start.at();
  }

  /** Everything noticed, errors first. */
  public List<Finding> findings() {
    return findings;
  }

  /** Whether nothing forbids applying it. */
  public boolean canApply() {
    return findings.stream().noneMatch(Finding::isError);
  }

  /** Whether applying it would change the study at all. */
  public boolean changesAnything() {
    return changesAnything;
  }

  private boolean changes(Study study) {
    Trial trial = trial(study);
    Optional<LoggerFile> known = known(trial);
    boolean mapping = options.get("save").filter(n -> !Mappings.isKept(study, n, LoggerIntake.TARGET,
        options.settings())).isPresent();
    return mapping || known.isEmpty() || !describes(known.get());
  }

  private Trial trial(Study study) {
    return study.getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> trialId.equals(t.getId()))
        .findFirst().orElse(null);
  }

  private Optional<LoggerFile> known(Trial trial) {
    return trial == null ? Optional.empty() : trial.getLoggers().stream().filter(l -> kept.sha256().equals(l.getSha256()))
        .findFirst();
  }

  /** Whether an entry says already what this import would write. */
  private boolean describes(LoggerFile file) {
    LoggerFile wanted = ModelFactory.eINSTANCE.createLoggerFile();
    write(wanted);
    boolean sameFile = wanted.eClass().getEAllAttributes().stream().filter(a -> wanted.eIsSet(a)).allMatch(a ->
        wanted.eGet(a).equals(file.eGet(a)));
    return sameFile && wanted.getChannels().stream().map(LoggerPreview::text).toList().equals(file.getChannels().stream()
        .map(LoggerPreview::text).toList());
  }

  private static String text(Channel c) {
    return c.getColumn() + "|" + c.getName() + "|" + c.getVariable() + "|" + c.getUnit();
  }

  /**
   * Copies the file as it is into the study's folder logs and describes it in the trial, as one change that undo takes
   * back; the copy stays. A file that the trial has already is described anew, or left alone when nothing differs.
   *
   * @throws IntakeException when there are errors, the trial is gone, or the file cannot be copied; the study stays as it was
   */
  public void apply(StudySession session) throws IntakeException {
    Trial trial = trial(session.study());
    if (!canApply() || trial == null) {
      throw new IntakeException(trial == null && canApply() ? List.of(Finding.error("trial.unknown", place,
          "the trial is no longer there", "look at the preview again"))
          : findings.stream().filter(Finding::isError).toList());
    }
    if (!changes(session.study())) {
      return;
    }
    kept.write();
    session.edit("Import logger file " + place, () -> {
      LoggerFile file = known(trial).orElseGet(() -> {
        LoggerFile made = ModelFactory.eINSTANCE.createLoggerFile();
        trial.getLoggers().add(made);
        return made;
      });
      if (!describes(file)) {
        file.getChannels().clear();
        write(file);
      }
      options.get("save").ifPresent(name -> Mappings.keep(session.study(), name, LoggerIntake.TARGET, options.settings()));
    });
  }

  private void write(LoggerFile file) {
    kept.describe(file, "logger");
    file.setDelimiter(String.valueOf(layout.delimiter()));
    file.setDecimal(layout.decimal() == DecimalSign.COMMA ? "," : ".");
    file.setHeaderRows(layout.headerRows());
    file.setTimeColumn(layout.timeColumn());
    file.setTimeFormat(layout.time().text());
    start.at().ifPresent(file::setStartAt);
    options.get("offset").map(Double::valueOf).ifPresent(file::setOffset);
    for (ChannelLayout channel : layout.channels()) {
      Channel made = ModelFactory.eINSTANCE.createChannel();
      made.setName(channel.name());
      made.setColumn(channel.column());
      made.setVariable(channel.variable().isEmpty() ? null : channel.variable());
      made.setUnit(channel.unitText().isEmpty() ? null : channel.unitText());
      file.getChannels().add(made);
    }
  }
}
