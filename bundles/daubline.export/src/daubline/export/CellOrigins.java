package daubline.export;

import daubline.analysis.EvidenceData;
import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Trail;
import daubline.engine.inference.Comparison;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Where a cell of a table comes from. A cell that has an origin of its own leads there; one that was worked out says by which
 * note of its table, and leads to what the row is about: the trial, the evidence sheet, the pair of both, the lot, the person.
 */
public final class CellOrigins {

  private static final Pattern DIGIT = Pattern.compile("\\d");

  private final StudyResults results;
  private final Table table;
  private final List<Cell> row;

  private CellOrigins(StudyResults results, Table table, List<Cell> row) {
    this.results = results;
    this.table = table;
    this.row = row;
  }

  /** The origin of a cell; empty where it says nothing. */
  public static Optional<Trail> of(StudyResults results, Table table, int row, int column) {
    Cell cell = table.rows().get(row).get(column);
    if (cell.text().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new CellOrigins(results, table, table.rows().get(row)).of(table.columns().get(column), cell));
  }

  /** Whether a text shows a number. */
  public static boolean isNumber(String text) {
    return DIGIT.matcher(text).find();
  }

  private Trail of(Column column, Cell cell) {
    if (cell.trail() != null) {
      return cell.trail();
    }
    String value = cell.text() + (column.unit().isEmpty() || column.unit().equals("0–100") ? "" : " " + column.unit());
    return Trail.reckoned(column.heading() + " – " + table.title() + name(), value, how(column), from());
  }

  /** What the row is about, by its first words. */
  private String name() {
    List<String> words = new ArrayList<>();
    for (int c = 0; c < row.size() && words.size() < 2; c++) {
      if (table.columns().get(c).kind() == Column.Kind.TEXT && !row.get(c).text().isEmpty()) {
        words.add(row.get(c).text());
      }
    }
    return words.isEmpty() ? "" : ", " + String.join(", ", words);
  }

  /** The note that speaks of the column, otherwise what the table as a whole is. */
  private String how(Column column) {
    List<String> own = table.notes().stream().filter(n -> n.contains(column.heading())).toList();
    return own.isEmpty() ? table.caption() : String.join(" ", own);
  }

  private List<Trail> from() {
    List<Trail> from = new ArrayList<>(row.stream().map(Cell::trail).filter(t -> t != null).distinct().toList());
    StudySnapshot study = results.snapshot();
    List<TrialData> trials = study.trials().stream().filter(t -> says(Predicate.isEqual(t.name()))).toList();
    List<EvidenceData> sheets = study.sheets().stream().filter(s -> says(Predicate.isEqual(s.sheet().name()))).toList();
    List<Comparison> pairs = results.comparisons().stream().filter(c -> (trials.isEmpty() || trials.stream().anyMatch(t -> t.id().equals(c.trial())))
        && (sheets.isEmpty() || sheets.stream().anyMatch(s -> s.sheet().id().equals(c.sheet())))).toList();
    if (!sheets.isEmpty() && !pairs.isEmpty()) {
      pairs.forEach(c -> from.add(Origins.agreement(c)));
    } else {
      trials.forEach(t -> from.add(new Trail("Trial " + t.name(), "", t.id(), Origins.of(study, t))));
      sheets.forEach(s -> from.add(new Trail("Evidence sheet " + s.sheet().name(), "", s.sheet().id(), Origins.of(s.sheet()))));
    }
    if (from.isEmpty()) {
      from.addAll(others(study));
    }
    return from;
  }

  /** Lots, people, reconstructions and citations that the row names; otherwise all that was compared. */
  private List<Trail> others(StudySnapshot study) {
    List<Trail> named = Stream.of(
        study.record().lots().stream().filter(l -> says(Predicate.isEqual(l.name()))).map(l -> Trail.entry("Lot", l.name(), l.id())),
        study.record().hypotheses().stream().filter(r -> says(Predicate.isEqual(r.name()))).map(r -> new Trail("Reconstruction", r.name(), r.id(),
            r.choices().stream().map(c -> c.trail()).toList())),
        study.record().people().stream().filter(p -> says(Predicate.isEqual(p.name()))).map(p -> Trail.entry("Person", p.name(), p.id())),
        study.record().citations().stream().filter(c -> says(Predicate.isEqual(c.id()))).map(c -> Trail.entry("Citation", c.title(), c.id())))
        .flatMap(s -> s).toList();
    return named.isEmpty() ? results.comparisons().stream().filter(Comparison::isTested).map(Origins::agreement).toList() : named;
  }

  private boolean says(Predicate<String> what) {
    return row.stream().map(Cell::text).anyMatch(what);
  }
}
