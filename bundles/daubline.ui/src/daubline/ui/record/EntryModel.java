package daubline.ui.record;

import daubline.analysis.EntryOrigins;
import daubline.base.Finding;
import daubline.base.Trail;
import daubline.model.LogEntry;
import daubline.model.ResidueMass;
import daubline.model.SpreadSquare;
import daubline.record.EntryTable;
import daubline.record.EventKind;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import daubline.ui.prefs.Preferred;
import daubline.ui.sheet.Sheets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;

/** A table that people fill in, as a grid: Enter goes to the next cell that the kind of row asks for. */
public final class EntryModel implements GridModel {

  private static final String INDENT = "\u2003";

  private static final int LONGEST = 18;
  private static final int LOOKED_AT = 100;

  private final EntryTable table;

  /** A grid over a table. */
  public EntryModel(EntryTable table) {
    this.table = table;
  }

  @Override
  public int columns() {
    return table.columns().size();
  }

  @Override
  public int rows() {
    return table.rows();
  }

  @Override
  public String heading(int column) {
    return table.heading(column);
  }

  @Override
  public double share(int column) {
    return table.share(column);
  }

  /** Words of a short list, and texts of the first rows, are shown whole, of a long one its beginning. */
  @Override
  public String widest(int column) {
    Stream<String> written = IntStream.range(0, Math.min(rows(), LOOKED_AT)).mapToObj(row -> table.text(row, column));
    return Stream.concat(table.choices(rows() - 1, column).stream(), written).map(w -> w.length() <= LONGEST ? w : w.substring(0, LONGEST))
        .max(Comparator.comparingInt(String::length)).orElse("");
  }

  @Override
  public GridCell cell(int column, int row) {
    String said = table.isDate(column) && !table.isRefused(row, column) ? Preferred.dates().show(table.text(row, column)) : table.text(row, column);
    String text = (column == 0 ? INDENT.repeat(table.depth(row)) : "") + said;
    Optional<Finding> finding = table.finding(row, column);
    boolean begun = table.object(row).isPresent();
    boolean open = table.isEditable(row, column);
    Look look = table.isRefused(row, column) ? Look.REFUSED : !open && begun ? Look.QUIET : Look.PLAIN;
    Mark mark = finding.isPresent() ? Mark.CHECK_NEEDED : Mark.NONE;
    return new GridCell(text, look, mark, finding.map(f -> Words.said(f)).orElse(""));
  }

  /** The variable, kind of entry or class of residue that the row is about, and then what the column asks for. */
  @Override
  public List<Explanation> explain(int column, int row) {
    List<Explanation> all = new ArrayList<>();
    table.variable(row, column).ifPresent(v -> all.add(Explanations.variable(v)));
    table.object(row).flatMap(EntryModel::kind).ifPresent(all::add);
    all.add(Explanations.said(heading(column), table.variable(row, column).filter(v -> v.meaning().equals(table.about(column))).isPresent() ? "" : table.about(column)));
    return all;
  }

  private static Optional<Explanation> kind(EObject object) {
    return switch (object) {
      case LogEntry entry -> EventKind.ofWord(entry.getKind()).map(Explanations::event);
      case ResidueMass mass -> Optional.ofNullable(mass.getResidueClass()).map(Explanations::residue);
      case SpreadSquare square -> Optional.ofNullable(square.getResidueClass()).map(Explanations::residue);
      default -> Optional.empty();
    };
  }

  /** The entry of the row, with what the column is worked out of where nobody types it. */
  @Override
  public Optional<Trail> origin(int column, int row) {
    String what = heading(column);
    return table.object(row).flatMap(o -> Sheets.studyOf(o).map(study -> {
      Trail entry = new EntryOrigins(study.session()).of(o, what, cell(column, row).text().strip());
      return table.isTyped(column) ? entry : Trail.reckoned(what, entry.value(), table.about(column), List.of(new Trail(Words.of("origin.entry"), "", entry.subject(), entry.from())));
    }));
  }

  @Override
  public boolean isEditable(int column, int row) {
    return row < table.rows() && table.isEditable(row, column);
  }

  @Override
  public String editText(int column, int row) {
    return table.editText(row, column);
  }

  @Override
  public void put(int column, int row, String text) {
    table.put(row, column, table.isDate(column) ? Preferred.dates().keep(text) : text);
  }

  /** What was not understood of a row that is begun with this line stays with it, not with the one that is not begun yet. */
  @Override
  public void putLine(int row, SortedMap<Integer, String> cells) {
    boolean fresh = table.object(row).isEmpty();
    cells.forEach((column, text) -> put(column, row, text));
    if (fresh && table.object(row).isPresent() && row + 1 < table.rows()) {
      cells.forEach((column, text) -> {
        if (table.isRefused(row + 1, column)) {
          put(column, row + 1, "");
          put(column, row, text);
        }
      });
    }
  }

  @Override
  public void together(String label, Runnable steps) {
    table.together(label, steps);
  }

  @Override
  public String columnTip(int column) {
    return table.about(column);
  }

  @Override
  public String columnId(int column) {
    return table.columns().get(column);
  }

  @Override
  public boolean isSortable() {
    return IntStream.range(0, rows()).allMatch(row -> table.depth(row) == 0);
  }

  @Override
  public int lastRows() {
    return table.canAdd() ? 1 : 0;
  }

  /** A text that may mean several things is asked about where it stands, so that Enter goes no further. */
  @Override
  public int[] next(int column, int row) {
    if (row < table.rows() && column < columns() && table.finding(row, column).filter(f -> f.code().equals(EntryTable.SEVERAL)).isPresent()) {
      return new int[] {column, row};
    }
    for (int c = column + 1; c < columns(); c++) {
      if (row < table.rows() && table.isAsked(row, c) && table.isEditable(row, c)) {
        return new int[] {c, row};
      }
    }
    boolean stays = row < table.rows() && table.object(row).isEmpty();
    int below = stays ? row : Math.min(row + 1, table.rows() - 1);
    for (int c = 0; c < columns(); c++) {
      if (table.isEditable(below, c)) {
        return new int[] {c, below};
      }
    }
    return new int[] {0, below};
  }
}
