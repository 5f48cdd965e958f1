package daubline.intake;

import daubline.base.Finding;
import daubline.base.Variables;
import daubline.intake.raw.RawFile;
import daubline.intake.raw.RawFiles;
import daubline.intake.raw.RawOptions;
import daubline.model.ImportMapping;
import daubline.model.Study;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The entrance: previews of files and pasted blocks, and empty tables to fill in. */
public final class Intake {

  private Intake() {
  }

  /**
   * Reads a file and says what importing it would do. The study is not changed.
   *
   * @param session the open study
   * @param file a CSV file or workbook
   * @param target what it is a table of
   * @param options what is known about it
   */
  public static Preview preview(StudySession session, Path file, Target target, IntakeOptions options) {
    Study study = session.study();
    Resolved known = resolve(study, target, options);
    RawFile raw = RawFiles.read(file, known.options.raw());
    Optional<KeptFile> kept = target == Target.ANALYSES && !raw.sheets().isEmpty() ? keep(session.folder(), file)
        : Optional.empty();
    return preview(study, raw, target, known, kept);
  }

  /**
   * The same for a block of cells copied from a spreadsheet, with its headings: cells parted by tabs.
   *
   * @param block the text as it came from the clipboard
   */
  public static Preview previewPasted(StudySession session, String block, Target target, IntakeOptions options) {
    Resolved known = resolve(session.study(), target, options);
    RawOptions raw = new RawOptions(Optional.of(StandardCharsets.UTF_8), known.options.raw().delimiter()
        .or(() -> Optional.of('\t')));
    RawFile file = RawFiles.read("pasted block", block.getBytes(StandardCharsets.UTF_8), raw);
    return preview(session.study(), file, target, known, Optional.empty());
  }

  private static Preview preview(Study study, RawFile raw, Target target, Resolved known, Optional<KeptFile> kept) {
    Form form = Forms.of(target);
    TableReader reader = new TableReader(form, StudyVariables.of(study), known.options);
    Table table = reader.read(raw);
    table.findings().addAll(known.findings);
    LabReading lab = new LabReading(study, StudyVariables.of(study), form, reader.options(), reader.recognised());
    Table recognised = form.isOfLaboratories() ? lab.of(table) : table;
    return new Preview(form, recognised, lab.recognised(), raw.how(), known.options, kept, study);
  }

  private static Optional<KeptFile> keep(Path folder, Path file) {
    try {
      return Optional.of(KeptFile.of(folder, "lab", file.getFileName().toString(), Files.readAllBytes(file)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private record Resolved(IntakeOptions options, List<Finding> findings) {
  }

  private static Resolved resolve(Study study, Target target, IntakeOptions options) {
    Optional<String> name = options.get("mapping");
    if (name.isEmpty()) {
      return new Resolved(options, List.of());
    }
    Optional<ImportMapping> mapping = Mappings.find(study, name.get(), target.word());
    List<Finding> findings = mapping.isPresent() ? List.of() : List.of(Finding.error("mapping.unknown", "mapping",
        "the study keeps no mapping “" + name.get()
        + "” for " + target.word(), Nearest.remedy(name.get(), Mappings.names(study, target.word()),
        "import once with save=" + name.get())));
    return new Resolved(options.over(mapping.map(Mappings::settings).orElse(Map.of())), findings);
  }

  /**
   * Writes an empty table with every column explained: a workbook with a sheet of explanations, or a CSV file with a text
   * beside it.
   *
   * @param file its name ends in .xlsx or .csv
   * @return the files written
   * @throws IntakeException when a file is there already or cannot be written, or the name has another ending
   */
  public static List<Path> template(Target target, Path file) throws IntakeException {
    return template(target, file, Variables.standard());
  }

  /** The same with the variables of a study. */
  public static List<Path> template(Target target, Path file, Variables variables) throws IntakeException {
    return new Template(Forms.of(target), variables).write(file);
  }

  /** The columns of a target, for help and documentation. */
  public static List<FormColumn> columns(Target target, Variables variables) {
    return Forms.of(target).columns(variables);
  }

  /** What a row of a target is and how it is recognised again. */
  public static String explanation(Target target) {
    return Forms.of(target).explanation();
  }
}
