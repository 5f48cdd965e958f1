package daubline.intake;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.intake.PreviewRow.State;
import daubline.model.DataFile;
import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What an import would do, row by row, with everything that was noticed; nothing is changed until it is applied. */
public final class Preview {

  private final Form form;
  private final Table table;
  private final String how;
  private final IntakeOptions options;
  private final Optional<KeptFile> raw;
  private final List<PreviewRow> rows;
  private final List<Finding> findings;
  private final boolean keepsMapping;
  private final List<Recognised> recognised;

  Preview(Form form, Table table, List<Recognised> recognised, String how, IntakeOptions options, Optional<KeptFile> raw, Study study) {
    this.form = form;
    this.table = table;
    this.recognised = recognised;
    this.how = how;
    this.options = options;
    this.raw = raw;
    this.rows = table.isRefused() ? List.of() : new RowRun(form, table, draft(EcoreUtil.copy(study))).run();
    this.findings = collect();
    this.keepsMapping = options.get("save").filter(n -> !Mappings.isKept(study, n, form.target().word(),
        options.settings())).isPresent();
  }

  private List<Finding> collect() {
    List<Finding> all = new ArrayList<>(table.findings());
    rows.forEach(r -> all.addAll(r.findings()));
    all.addAll(LabReading.open(table.place(), recognised));
    all.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(all);
  }

  private Draft draft(Study study) {
    return new Draft(study, StudyVariables.of(study), () -> raw.map(file -> file.entry(study).orElseGet(() -> {
      DataFile entry = ModelFactory.eINSTANCE.createDataFile();
      file.describe(entry, "laboratory");
      study.getFiles().add(entry);
      return entry;
    })).orElse(null));
  }

  /** What the file is a table of. */
  public Target target() {
    return form.target();
  }

  /** Where it was read from: file, and sheet of a workbook. */
  public String place() {
    return table.place();
  }

  /** How it was read, in words: encoding, delimiter, heading row, decimal sign. */
  public String how() {
    return table.rows().isEmpty() ? how : how + ", headings in row " + table.header() + ", decimal "
        + table.decimal().name().toLowerCase(Locale.ROOT);
  }

  /** The columns that are read: heading in the file and column of the form. */
  public List<String> readColumns() {
    return table.columns().stream().map(b -> b.heading().equals(b.column().id()) ? b.heading() : b.heading() + " → "
        + b.column().id()).toList();
  }

  /** The headings of the columns that are not read. */
  public List<String> unreadColumns() {
    return table.unread();
  }

  /** What was recognised in a laboratory's table; nothing for other tables. */
  public List<Recognised> recognised() {
    return recognised;
  }

  /** Each row and what it would do. */
  public List<PreviewRow> rows() {
    return rows;
  }

  /** The number of rows of one state. */
  public long count(State state) {
    return rows.stream().filter(r -> r.state() == state).count();
  }

  /** Everything noticed, errors first. */
  public List<Finding> findings() {
    return findings;
  }

  /** Whether nothing forbids applying it. */
  public boolean canApply() {
    return findings.stream().noneMatch(f -> f.severity() == Severity.ERROR);
  }

  /** Whether applying it would change the study at all. */
  public boolean changesAnything() {
    return keepsMapping || rows.stream().anyMatch(r -> r.state() == State.ADDED || r.state() == State.UPDATED);
  }

  /** The name of the change, as undo shows it. */
  public String label() {
    return "Import " + form.target().word() + " from " + table.place();
  }

  /**
   * Takes all rows over as one change that undo takes back. When the study says everything already, nothing is done.
   *
   * @throws IntakeException when there are errors, or the study was changed since the preview so that a row no longer
   *     fits; the study stays as it was
   */
  public void apply(StudySession session) throws IntakeException {
    if (!canApply()) {
      throw new IntakeException(findings.stream().filter(Finding::isError).toList());
    }
    if (!changesAnything()) {
      return;
    }
    if (raw.isPresent()) {
      raw.get().write();
    }
    boolean done = false;
    try {
      session.edit(label(), () -> write(session.study()));
      done = true;
    } catch (Stale e) {
      throw new IntakeException(e.findings);
    } catch (IllegalArgumentException e) {
      throw new IntakeException(List.of(Finding.error("text.unstorable", table.place(), e.getMessage(),
          "remove the character from the file")));
    } finally {
      if (!done) {
        raw.ifPresent(KeptFile::takeBack);
      }
    }
  }

  private void write(Study study) {
    List<PreviewRow> written = new RowRun(form, table, draft(study)).run();
    List<Finding> errors = written.stream().flatMap(r -> r.findings().stream()).filter(Finding::isError).toList();
    if (!errors.isEmpty()) {
      throw new Stale(errors);
    }
    options.get("save").ifPresent(name -> Mappings.keep(study, name, form.target().word(), options.settings()));
  }

  /** Ends an edit whose rows no longer fit, so that the session takes it back. */
  private static final class Stale extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient List<Finding> findings;

    Stale(List<Finding> findings) {
      super("rows no longer fit", null, false, false);
      this.findings = findings;
    }
  }
}
