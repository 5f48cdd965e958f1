package daubline.ui.table;

import daubline.intake.Recognised;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What was recognised in a laboratory's table, the doubtful first; each guess can be confirmed or changed. */
final class RecognisedModel implements GridModel {

  private static final String[] HEADINGS = {"recognised.where", "recognised.aspect", "recognised.found", "recognised.state", "recognised.why"};
  private static final double[] SHARES = {1.3, 0.9, 1.3, 0.9, 3};
  private static final int FOUND = 2;
  private static final int STATE = 3;
  private static final int WHY = 4;

  private final Runnable changed;
  private final Map<String, String> said = new TreeMap<>();
  private List<Recognised> items = List.of();

  RecognisedModel(Runnable changed) {
    this.changed = changed;
  }

  void show(List<Recognised> recognised) {
    items = recognised.stream().sorted(Comparator.comparing((Recognised r) -> !r.isOpen())).toList();
  }

  /** What a person confirmed or changed, as settings of the intake. */
  Map<String, String> said() {
    return said;
  }

  /** How many things are still to be confirmed or said. */
  long open() {
    return items.stream().filter(Recognised::isOpen).count();
  }

  /** Confirms the guess of a row, or of all rows, as it is shown. */
  void confirm(List<Integer> rows) {
    List<Recognised> guessed = rows.stream().filter(r -> r < items.size()).map(items::get).filter(r -> r.state() == Recognised.State.GUESSED).toList();
    // what was typed and is still being read again stays
    guessed.forEach(r -> said.putIfAbsent(r.setting(), r.found()));
    if (!guessed.isEmpty()) {
      changed.run();
    }
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return items.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(HEADINGS[column]);
  }

  @Override
  public String key(int column) {
    return HEADINGS[column];
  }

  @Override
  public double share(int column) {
    return SHARES[column];
  }

  @Override
  public GridCell cell(int column, int row) {
    Recognised r = items.get(row);
    return switch (column) {
      case 0 -> GridCell.of(r.where().equals("*") ? Words.of("recognised.all") : r.where(), Look.NAME);
      case 1 -> GridCell.of(Words.of(r.aspect()));
      case FOUND -> found(r);
      case STATE -> new GridCell(Words.of(r.state()), Look.PLAIN, r.isOpen() ? Mark.CHECK_NEEDED : Mark.NONE, "");
      default -> new GridCell(r.why(), Look.QUIET, Mark.NONE, r.why());
    };
  }

  private static GridCell found(Recognised r) {
    String text = r.found().isEmpty() && r.isOpen() ? Words.of("recognised.none") : shown(r.found());
    return new GridCell(text, r.isOpen() ? Look.GUESS : Look.PLAIN, Mark.NONE, r.setting().isEmpty() ? text : Words.of("recognised.change"));
  }

  /** A text of the intake in the language of the window: one of its words, or a name behind one, as in trial T4. */
  private static String shown(String text) {
    String whole = Words.orElse("choice." + text.replace(' ', '_'), "");
    int end = text.indexOf(' ');
    String first = end < 0 ? "" : Words.orElse("choice." + text.substring(0, end), "");
    return !whole.isEmpty() ? whole : first.isEmpty() ? text : first + text.substring(end);
  }

  @Override
  public boolean isEditable(int column, int row) {
    return column == FOUND && !items.get(row).setting().isEmpty() || column == STATE && items.get(row).state() == Recognised.State.GUESSED;
  }

  @Override
  public String editText(int column, int row) {
    return column == FOUND ? shown(items.get(row).found()) : GridModel.super.editText(column, row);
  }

  @Override
  public List<String> choices(int column, int row) {
    return !isEditable(column, row) ? List.of() : column == FOUND ? items.get(row).choices().stream().map(RecognisedModel::shown).toList() : List.of(Words.of(Recognised.State.STATED));
  }

  @Override
  public void put(int column, int row, String text) {
    Recognised r = items.get(row);
    if (column == STATE) {
      confirm(List.of(row));
    } else {
      String typed = text.strip();
      String chosen = r.choices().stream().filter(c -> c.equalsIgnoreCase(typed) || shown(c).equalsIgnoreCase(typed)).findFirst().orElse(typed);
      said.remove(r.setting());
      if (!chosen.isEmpty()) {
        said.put(r.setting(), chosen);
      }
      changed.run();
    }
  }

  @Override
  public String widest(int column) {
    return column == WHY ? "" : heading(column);
  }
}
