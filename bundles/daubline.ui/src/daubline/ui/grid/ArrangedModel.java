package daubline.ui.grid;

import daubline.base.Trail;
import daubline.ui.explain.Explanation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * The model of a grid as a person has arranged it: without the columns left out, in the order of a column, only the rows
 * that hold a text. As long as nothing was arranged it costs nothing, however many rows there are.
 */
final class ArrangedModel implements GridModel {

  private final GridModel base;
  private final Set<String> leftOut = new HashSet<>();
  private String sorted = "";
  private boolean down;
  private String wanted = "";
  private int[] columns = {};
  /** The rows in their order; null when they stand as the model has them. */
  private int[] rows;
  private int known = -1;
  private int counted = -1;
  private boolean typed;

  ArrangedModel(GridModel base) {
    this.base = base;
  }

  /** The model as it is. */
  GridModel base() {
    return base;
  }

  /** The ids of the columns left out. */
  Set<String> leftOut() {
    return leftOut;
  }

  /** The id of a column of the base; a heading tells columns of one kind apart. */
  String idOf(int column) {
    String id = base.columnId(column);
    boolean twice = IntStream.range(0, base.columns()).anyMatch(c -> c != column && base.columnId(c).equals(id));
    return (twice ? id + "|" + base.heading(column) : id).replaceAll("\\s+", " ");
  }

  /** The id of the column by which rows are ordered; empty for none. */
  String sorted() {
    return sorted;
  }

  /** Whether the largest stands first. */
  boolean isDown() {
    return down;
  }

  /** The text that every row shown holds. */
  String wanted() {
    return wanted;
  }

  /** Orders the rows by a column; an empty id leaves them as the model has them. */
  void sort(String id, boolean downwards) {
    sorted = base.isSortable() ? id : "";
    down = downwards;
    typed = false;
    arrange();
  }

  /** Shows only rows that hold a text; an empty one shows all. */
  void want(String text) {
    wanted = text.strip().toLowerCase(Locale.ROOT);
    typed = false;
    arrange();
  }

  /** Finds out anew which columns and rows are shown. Rows do not jump because of what was just typed into one of them. */
  void arrange() {
    chooseColumns();
    boolean plain = wanted.isEmpty() && (sorted.isEmpty() || sortedColumn().isEmpty());
    if (plain) {
      rows = null;
    } else if (!typed || rows == null || counted != base.rows()) {
      rows = order();
      counted = base.rows();
    }
    typed = false;
  }

  /** Says that the next time the rows stay where they are, since only what is in them was changed. */
  void touch() {
    typed = true;
  }

  private void chooseColumns() {
    known = base.columns();
    columns = IntStream.range(0, known).filter(c -> !leftOut.contains(idOf(c))).toArray();
    if (columns.length == 0 && known > 0) {
      columns = new int[] {0};
    }
  }

  private Optional<Integer> sortedColumn() {
    return IntStream.range(0, base.columns()).filter(c -> idOf(c).equals(sorted)).boxed().findFirst();
  }

  private int[] order() {
    int free = Math.max(0, base.rows() - base.lastRows());
    List<Integer> found = new ArrayList<>(IntStream.range(0, free).filter(this::holds).boxed().toList());
    sortedColumn().filter(c -> !sorted.isEmpty()).ifPresent(c -> {
      SortKey[] keys = new SortKey[free];
      found.forEach(row -> keys[row] = SortKey.of(base.cell(c, row).words()));
      Comparator<Integer> up = Comparator.comparing(row -> keys[row]);
      // empty cells stand last both ways
      Comparator<Integer> blank = Comparator.comparing(row -> keys[row].text().isBlank());
      found.sort(blank.thenComparing(down ? up.reversed() : up));
    });
    return IntStream.concat(found.stream().mapToInt(i -> i), IntStream.range(free, base.rows())).toArray();
  }

  private boolean holds(int row) {
    return wanted.isEmpty() || IntStream.range(0, base.columns()).anyMatch(c -> base.cell(c, row).words().toLowerCase(Locale.ROOT).contains(wanted));
  }

  /** The column of the base that stands at a place. */
  int column(int place) {
    return place >= 0 && place < shown().length ? columns[place] : place;
  }

  /** The row of the base that stands at a place. */
  int row(int place) {
    return rows == null || place < 0 ? place : place < rows.length ? rows[place] : base.rows();
  }

  /** The place of a column of the base; -1 when it is left out. */
  int placeOfColumn(int column) {
    int[] now = shown();
    return IntStream.range(0, now.length).filter(p -> now[p] == column).findFirst().orElse(-1);
  }

  /** The place of a row of the base; -1 when it is not shown. */
  int placeOfRow(int row) {
    return rows == null ? row : IntStream.range(0, rows.length).filter(p -> rows[p] == row).findFirst().orElse(-1);
  }

  private int[] shown() {
    if (known != base.columns()) {
      chooseColumns();
    }
    return columns;
  }

  @Override
  public int columns() {
    return shown().length;
  }

  @Override
  public int rows() {
    return rows == null ? base.rows() : rows.length;
  }

  @Override
  public String heading(int column) {
    return base.heading(column(column));
  }

  /** The heading with a sign that shows the order. */
  String signed(int column) {
    boolean here = !sorted.isEmpty() && rows != null && idOf(column(column)).equals(sorted);
    return here ? heading(column) + (down ? " \u25BC" : " \u25B2") : heading(column);
  }

  @Override
  public double share(int column) {
    return base.share(column(column));
  }

  @Override
  public String widest(int column) {
    return base.widest(column(column));
  }

  @Override
  public GridCell cell(int column, int row) {
    return row(row) < base.rows() ? base.cell(column(column), row(row)) : GridCell.EMPTY;
  }

  @Override
  public String key(int column) {
    return base.key(column(column));
  }

  @Override
  public String columnTip(int column) {
    return base.columnTip(column(column));
  }

  @Override
  public String columnId(int column) {
    return idOf(column(column));
  }

  @Override
  public boolean isSortable() {
    return base.isSortable();
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return base.origin(column(column), row(row));
  }

  @Override
  public List<Explanation> explain(int column, int row) {
    return base.explain(column(column), row(row));
  }

  @Override
  public boolean isEditable(int column, int row) {
    return row(row) < base.rows() && base.isEditable(column(column), row(row));
  }

  @Override
  public String editText(int column, int row) {
    return base.editText(column(column), row(row));
  }

  @Override
  public List<String> choices(int column, int row) {
    return row(row) < base.rows() ? base.choices(column(column), row(row)) : List.of();
  }

  @Override
  public void put(int column, int row, String text) {
    typed = true;
    base.put(column(column), row(row), text);
  }

  @Override
  public void putLine(int row, SortedMap<Integer, String> cells) {
    typed = true;
    SortedMap<Integer, String> there = new TreeMap<>();
    cells.forEach((place, text) -> there.put(column(place), text));
    base.putLine(row(row), there);
  }

  @Override
  public void together(String label, Runnable steps) {
    base.together(label, steps);
  }

  /** From a cell that Enter would go to and that is not shown, Enter goes on until it comes to one that is. */
  @Override
  public int[] next(int column, int row) {
    int[] at = base.next(column(column), row(row));
    for (int tries = 0; at != null && tries <= base.columns() && (placeOfColumn(at[0]) < 0 || placeOfRow(at[1]) < 0); tries++) {
      at = base.next(at[0], at[1]);
    }
    return at == null ? null : new int[] {Math.max(0, placeOfColumn(at[0])), Math.max(0, placeOfRow(at[1]))};
  }

  @Override
  public int linesPerRow() {
    return base.linesPerRow();
  }
}
