package daubline.ui.table;

import daubline.session.merge.Conflict;
import daubline.session.merge.Side;
import daubline.session.merge.StudyMerge;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The conflicts of a merge, each with what both began from, mine, theirs and what is taken; below them what is taken without asking. */
final class MergingModel implements GridModel {

  private static final String[] HEADINGS = {"merging.object", "merging.what", "merging.base", "merging.here", "merging.there", "merging.taken"};
  private static final double[] SHARES = {2.2, 1, 1.1, 1.1, 1.1, 1};
  private static final int TAKEN = 5;

  private final List<Conflict> conflicts;
  private final List<String> taken;
  private final Map<String, Side> choices = new LinkedHashMap<>();
  private final Runnable afterChoice;

  MergingModel(StudyMerge merge, Runnable afterChoice) {
    conflicts = merge.conflicts();
    taken = merge.taken();
    this.afterChoice = afterChoice;
  }

  /** What was chosen, by id of the conflict. */
  Map<String, Side> choices() {
    return Map.copyOf(choices);
  }

  void chooseAll(Side side) {
    conflicts.forEach(c -> choices.put(c.id(), side));
    afterChoice.run();
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return conflicts.size() + taken.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(key(column));
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
    if (row >= conflicts.size()) {
      String line = taken.get(row - conflicts.size());
      String text = column == 0 ? line : column == TAKEN ? Words.of("merging.unasked") : "";
      return new GridCell(text, Look.QUIET, Mark.NONE, column == 0 ? line : "");
    }
    Conflict c = conflicts.get(row);
    return switch (column) {
      case 0 -> new GridCell(c.place(), Look.NAME, Mark.NONE, c.object() + " " + c.place());
      case 1 -> GridCell.of(c.kind() == Conflict.Kind.FIELD ? Words.orElse("merging.field." + c.field(), c.field()) : Words.of("merging.kind." + c.kind()));
      case 2 -> said(c.base());
      case 3 -> said(c.mine());
      case 4 -> said(c.theirs());
      default -> choices.containsKey(c.id()) ? GridCell.of(word(choices.get(c.id()))) : new GridCell(Words.of("merging.open"), Look.PLAIN, Mark.CHECK_NEEDED, "");
    };
  }

  private static GridCell said(String text) {
    return new GridCell(text, Look.PLAIN, Mark.NONE, text);
  }

  private static String word(Side side) {
    return Words.of("merging.side." + side);
  }

  @Override
  public boolean isEditable(int column, int row) {
    return column == TAKEN && row < conflicts.size();
  }

  @Override
  public List<String> choices(int column, int row) {
    return List.of(word(Side.MINE), word(Side.THEIRS), Words.of("merging.open"));
  }

  @Override
  public void put(int column, int row, String text) {
    String id = conflicts.get(row).id();
    choices.remove(id);
    Arrays.stream(Side.values()).filter(s -> word(s).equals(text)).forEach(s -> choices.put(id, s));
    afterChoice.run();
  }
}
