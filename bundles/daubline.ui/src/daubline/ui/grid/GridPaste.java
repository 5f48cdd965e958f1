package daubline.ui.grid;

import daubline.base.DecimalSign;
import daubline.intake.PastedBlock;
import daubline.ui.Words;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.look.Over;
import daubline.ui.look.StatusLine;
import daubline.ui.prefs.Preferred;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.graphics.Point;

/**
 * Puts a block of cells from the clipboard into a grid, as one change. A first line of headings says into which columns; with
 * the column that names the rows, also into which rows. Numbers with another decimal sign get that of the window.
 */
final class GridPaste {

  private final Grid grid;
  private final ArrangedModel model;
  private final GridModel base;
  /** How many rows stood on the screen at first. */
  private final int places;
  private final String name;
  private int taken;
  private int left;
  private int wrong;

  GridPaste(Grid grid, String name) {
    this.grid = grid;
    this.model = grid.arranged();
    this.base = model.base();
    this.places = model.rows();
    this.name = name;
  }

  /** Pastes a text, and says below how much of it was taken. */
  void paste(String text) {
    PastedBlock block = signed(PastedBlock.of(text));
    if (block == null || block.lines().isEmpty() || grid.place().isEmpty()) {
      return;
    }
    if (block.cells() == 1 && grid.places().size() > 1) {
      everywhere(block.lines().get(0).get(0));
    } else {
      block(block);
    }
    grid.rebuild();
    StatusLine.say(Words.of("paste.done", taken) + (left > 0 ? " " + Words.of("paste.left", left) : "") + (wrong > 0 ? " " + Words.of("paste.wrong", wrong) : ""));
  }

  /** The block with the decimal sign of the window; null when a person who was asked took it back. */
  private static PastedBlock signed(PastedBlock block) {
    DecimalSign wanted = Preferred.decimal();
    if (block.isAmbiguous(wanted)) {
      MessageDialog question = new MessageDialog(Over.shell(), Words.of("paste.title"), null, Words.of("paste.ambiguous", wanted.other().sign(), wanted.sign()),
          MessageDialog.QUESTION, 0, Words.of("paste.decimal"), Words.of("paste.cancel"));
      return question.open() == 0 ? block.with(wanted) : null;
    }
    return block.decimal().filter(wanted.other()::equals).map(other -> block.with(wanted)).orElse(block);
  }

  private void everywhere(String text) {
    List<Point> cells = grid.places();
    base.together(Words.of("change.paste", cells.size(), name), () -> cells.forEach(p -> put(model.row(p.y), new TreeMap<>(Map.of(model.column(p.x), text)))));
  }

  private void block(PastedBlock block) {
    Point at = grid.place().orElseThrow();
    List<Integer> byHeading = headings(block.lines().get(0));
    boolean named = block.lines().size() > 1 && !byHeading.isEmpty();
    List<List<String>> lines = named ? block.lines().subList(1, block.lines().size()) : block.lines();
    int widest = lines.stream().mapToInt(List::size).max().orElse(0);
    List<Integer> columns = named ? byHeading : IntStream.range(at.x, Math.min(at.x + widest, model.columns())).map(model::column).boxed().toList();
    boolean rowsNamed = named && columns.contains(0) && IntStream.range(0, base.rows()).noneMatch(row -> base.isEditable(0, row));
    List<SortedMap<Integer, String>> all = lines.stream().map(line -> cells(line, columns)).toList();
    base.together(Words.of("change.paste", lines.stream().mapToInt(List::size).sum(), name), () -> {
      if (rowsNamed) {
        all.forEach(cells -> put(namedRow(cells.getOrDefault(0, "")), cells));
      } else {
        downwards(at.y, all);
      }
    });
    model.touch();
  }

  /** The columns of the model that a line of headings names; empty when it is none. */
  private List<Integer> headings(List<String> line) {
    List<Integer> found = new ArrayList<>();
    for (String heading : line) {
      IntStream.range(0, base.columns()).filter(c -> base.heading(c).replaceAll("\\s+", " ").strip().equalsIgnoreCase(heading.strip())).findFirst().ifPresent(found::add);
    }
    return found.size() == line.size() && line.stream().noneMatch(String::isBlank) ? found : List.of();
  }

  private SortedMap<Integer, String> cells(List<String> line, List<Integer> columns) {
    SortedMap<Integer, String> cells = new TreeMap<>();
    for (int i = 0; i < line.size(); i++) {
      if (i < columns.size()) {
        cells.put(columns.get(i), line.get(i).strip());
      } else {
        left += line.get(i).isBlank() ? 0 : 1;
      }
    }
    return cells;
  }

  private int namedRow(String wanted) {
    return IntStream.range(0, base.rows()).filter(row -> base.cell(0, row).words().equals(wanted)).findFirst().orElse(base.rows());
  }

  /** Line after line into row after row as they stand on the screen; headings of groups are stepped over. */
  private void downwards(int from, List<SortedMap<Integer, String>> all) {
    int place = from;
    for (int i = 0; i < all.size(); i++) {
      SortedMap<Integer, String> cells = all.get(i);
      boolean empty = cells.values().stream().allMatch(String::isBlank);
      while (!empty && rowAt(place) < base.rows() && base.cell(0, rowAt(place)).look() == Look.GROUP) {
        place++;
      }
      int row = rowAt(place);
      int before = base.rows();
      int refused = wrong;
      put(row, cells);
      boolean begun = row < before - base.lastRows() || base.rows() > before;
      if (!begun && row < before && wrong > refused) {
        // nothing of the line could be read; the lines below would take its place
        left += all.subList(i + 1, all.size()).stream().mapToInt(SortedMap::size).sum();
        return;
      }
      place += begun || row >= before ? 1 : 0;
    }
  }

  /** The row of the model at a place; behind the last place the one that is not begun yet. */
  private int rowAt(int place) {
    return place < places ? model.row(place) : base.lastRows() > 0 ? base.rows() - 1 : base.rows();
  }

  private void put(int row, SortedMap<Integer, String> cells) {
    SortedMap<Integer, String> open = new TreeMap<>();
    cells.forEach((column, text) -> {
      if (row < base.rows() && base.isEditable(column, row)) {
        open.put(column, text);
      } else if (!text.isBlank() && (row >= base.rows() || !base.cell(column, row).words().equals(text))) {
        left++;
      }
    });
    if (!open.isEmpty()) {
      base.putLine(row, open);
      taken += (int) open.values().stream().filter(t -> !t.isBlank()).count();
      wrong += (int) open.keySet().stream().filter(c -> row < base.rows() && c < base.columns() && base.cell(c, row).look() == Look.REFUSED).count();
    }
  }
}
