package daubline.intake.logger;

import daubline.base.FileFault;
import daubline.base.Finding;
import daubline.intake.IntakeOptions;
import daubline.intake.KeptFile;
import daubline.intake.Mappings;
import daubline.intake.Nearest;
import daubline.intake.raw.Delimiters;
import daubline.intake.raw.RawFile;
import daubline.intake.raw.RawFiles;
import daubline.intake.raw.RawSheet;
import daubline.model.ImportMapping;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes the file of a data logger into a trial: a preview of its layout and content first, then one undoable change. */
public final class LoggerIntake {

  /** The word under which mappings of loggers are kept. */
  public static final String TARGET = "logger";

  private LoggerIntake() {
  }

  /**
   * Reads a logger's file and says how it would be taken over. The study is not changed.
   *
   * @param session the open study
   * @param file the file as the logger wrote it
   * @param trial id or name of the trial
   * @param options what is known about it: see {@link IntakeOptions}
   */
  public static LoggerPreview preview(StudySession session, Path file, String trial, IntakeOptions options) {
    List<Finding> findings = new ArrayList<>();
    Study study = session.study();
    IntakeOptions known = resolve(study, options, findings);
    Optional<Trial> home = trial(study, trial, findings);
    RawFile raw = RawFiles.read(file, known.raw());
    findings.addAll(raw.findings());
    String place = file.getFileName().toString();
    if (raw.sheets().isEmpty() || home.isEmpty()) {
      return LoggerPreview.refused(place, findings);
    }
    RawSheet sheet = sheet(raw);
    char delimiter = known.raw().delimiter().orElseGet(() -> delimiter(raw));
    Optional<LoggerLayout> layout = new LayoutFinder(place, sheet, StudyVariables.of(study), known, findings).find(delimiter);
    Optional<KeptFile> kept = keep(session.folder(), file, findings);
    if (layout.isEmpty() || kept.isEmpty()) {
      return LoggerPreview.refused(place, findings);
    }
    LoggerSeries series = new LoggerParser(place, layout.get()).parse(sheet);
    return new LoggerPreview(place, layout.get(), series, new LoggerStart(sheet, layout.get(), home.get(), known),
        home.get().getId(), known, kept.get(), findings,
        StudyVariables.of(study), study);
  }

  /** The sheet of a workbook that holds most rows; the only one of a CSV file. */
  static RawSheet sheet(RawFile raw) {
    return raw.sheets().stream().max(Comparator.comparingInt(s -> s.rows().size())).orElseThrow();
  }

  private static char delimiter(RawFile raw) {
    return Delimiters.KNOWN.stream().filter(d -> raw.how().endsWith(Delimiters.name(d))).findFirst().orElse(',');
  }

  private static Optional<KeptFile> keep(Path folder, Path file, List<Finding> findings) {
    try {
      return Optional.of(KeptFile.of(folder, "logs", file.getFileName().toString(), Files.readAllBytes(file)));
    } catch (IOException e) {
      findings.add(Finding.error("file.unreachable", file.toString(), FileFault.what(e),
          "check that you may read it"));
      return Optional.empty();
    }
  }

  private static Optional<Trial> trial(Study study, String wanted, List<Finding> findings) {
    List<Trial> all = study.getSeries().stream().flatMap(s -> s.getTrials().stream()).toList();
    List<Trial> found = all.stream().filter(t -> wanted.equals(t.getId()) || wanted.equals(t.getName())).toList();
    if (found.size() != 1) {
      findings.add(Finding.error(found.isEmpty() ? "trial.unknown" : "trial.ambiguous", "trial", "“" + wanted + "” names "
          + found.size() + " trials",
          Nearest.remedy(wanted, all.stream().map(Trial::getName).filter(n -> n != null).toList(),
          "name one trial by its id or its name")));
    }
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  private static IntakeOptions resolve(Study study, IntakeOptions options, List<Finding> findings) {
    Optional<String> name = options.get("mapping");
    Optional<ImportMapping> mapping = name.flatMap(n -> Mappings.find(study, n, TARGET));
    if (name.isPresent() && mapping.isEmpty()) {
      findings.add(Finding.error("mapping.unknown", "mapping", "the study keeps no mapping “" + name.get() + "” for loggers",
          Nearest.remedy(name.get(), Mappings.names(study, TARGET), "import once with save=" + name.get())));
    }
    return options.over(mapping.map(Mappings::settings).orElse(Map.of()));
  }
}
