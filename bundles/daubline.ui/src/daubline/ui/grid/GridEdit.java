package daubline.ui.grid;

import daubline.ui.Words;
import daubline.ui.edit.EditTarget;
import daubline.ui.edit.Edits;
import java.util.List;
import org.eclipse.swt.graphics.Point;

/** What the commands of the Edit menu do to the selected cells of a grid; whatever they write is one change. */
final class GridEdit implements EditTarget {

  private final Grid grid;
  private final String name;

  GridEdit(Grid grid, String name) {
    this.grid = grid;
    this.name = name;
  }

  @Override
  public boolean can(Deed deed) {
    return switch (deed) {
      case COPY -> grid.place().isPresent();
      case CUT, DELETE -> !open().isEmpty();
      case PASTE -> grid.place().isPresent() && isWritten();
      case SELECT_ALL, FIND -> grid.arranged().base().rows() > 0;
    };
  }

  /** Whether anything can be typed into the rows that are selected or the columns beside them. */
  private boolean isWritten() {
    ArrangedModel model = grid.arranged();
    return grid.place().map(p -> java.util.stream.IntStream.range(0, model.columns()).anyMatch(c -> model.isEditable(c, p.y))
        || model.isEditable(p.x, Math.min(p.y + 1, model.rows() - 1))).orElse(false);
  }

  private List<Point> open() {
    return grid.places().stream().filter(p -> grid.arranged().isEditable(p.x, p.y) && !grid.arranged().editText(p.x, p.y).isEmpty()).toList();
  }

  @Override
  public void act(Deed deed) {
    switch (deed) {
      case COPY -> Edits.copy(grid.copied(true));
      case CUT -> {
        Edits.copy(grid.copied(true));
        clear("change.cut");
      }
      case PASTE -> new GridPaste(grid, name).paste(Edits.pasted());
      case DELETE -> clear("change.clear");
      case SELECT_ALL -> grid.selectAll();
      case FIND -> grid.finder().open();
    }
  }

  /** Empties the selected cells, the last row first, for rows may go with what was in them. */
  private void clear(String key) {
    List<Point> cells = open().reversed();
    if (!cells.isEmpty()) {
      grid.arranged().together(Words.of(key, cells.size(), name), () -> cells.forEach(p -> grid.arranged().put(p.x, p.y, "")));
      grid.rebuild();
    }
  }

  /** Writes what the first selected cell holds into all of them. */
  void fill() {
    ArrangedModel model = grid.arranged();
    List<Point> cells = grid.places().stream().filter(p -> model.isEditable(p.x, p.y)).toList();
    if (cells.size() > 1) {
      String text = model.editText(cells.get(0).x, cells.get(0).y);
      model.together(Words.of("change.fill", cells.size(), name), () -> cells.stream().skip(1).filter(p -> !model.editText(p.x, p.y).equals(text))
          .forEach(p -> model.put(p.x, p.y, text)));
      grid.rebuild();
    }
  }
}
