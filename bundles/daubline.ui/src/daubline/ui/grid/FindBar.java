package daubline.ui.grid;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * A bar over the lower edge of a grid in which something is searched for: Enter goes to the next cell that holds it, with
 * Shift to the one before, Esc closes. Only the rows that hold it can be shown.
 */
final class FindBar {

  private static final int LETTERS = 22;

  private final Grid grid;
  private Composite bar;
  private Text text;
  private Button only;
  private Label found;

  FindBar(Grid grid) {
    this.grid = grid;
  }

  /** Whether it is there. */
  boolean isOpen() {
    return bar != null && !bar.isDisposed();
  }

  /** Opens it, or goes to it when it is open. */
  void open() {
    open(grid.arranged().wanted(), !grid.arranged().wanted().isEmpty(), true);
  }

  /** Opens it with a text. */
  void open(String wanted, boolean onlyFound, boolean focused) {
    if (grid.control().isDisposed()) {
      return;
    }
    if (!isOpen()) {
      make();
      text.setText(wanted);
      only.setSelection(onlyFound);
    }
    place();
    tell();
    if (focused) {
      text.setFocus();
      text.selectAll();
    }
  }

  private void make() {
    bar = new Composite(grid.control(), SWT.BORDER);
    GridLayout layout = new GridLayout(4, false);
    layout.marginHeight = 2;
    bar.setLayout(layout);
    bar.setBackground(Hue.BAND.color());
    text = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH);
    text.setData("id", "grid-find");
    text.setMessage(Words.of("find.text"));
    Pages.named(text, Words.of("find.text"), Words.of("find.text.tip"));
    GridData room = new GridData(SWT.FILL, SWT.CENTER, true, false);
    room.widthHint = LETTERS * Fonts.PLAIN.characterWidth(text);
    text.setLayoutData(room);
    only = new Button(bar, SWT.CHECK);
    only.setText(Words.of("find.only"));
    only.setData("id", "grid-find-only");
    Pages.named(only, Words.of("find.only"), Words.of("find.only.tip"));
    found = new Label(bar, SWT.NONE);
    found.setBackground(Hue.BAND.color());
    found.setForeground(Hue.INK.color());
    found.setData("id", "grid-find-count");
    Button close = new Button(bar, SWT.PUSH);
    close.setText(Words.of("find.close"));
    close.setData("id", "grid-find-close");
    Pages.named(close, Words.of("find.close"), "");
    close.addListener(SWT.Selection, e -> close());
    text.addListener(SWT.Modify, e -> changed());
    only.addListener(SWT.Selection, e -> changed());
    text.addListener(SWT.KeyDown, e -> key(e.keyCode, (e.stateMask & SWT.SHIFT) != 0));
    only.addListener(SWT.KeyDown, e -> key(e.keyCode == SWT.ESC ? SWT.ESC : 0, false));
    text.addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_RETURN && e.detail != SWT.TRAVERSE_ESCAPE);
    grid.control().addListener(SWT.Resize, e -> place());
  }

  private void place() {
    if (isOpen()) {
      Rectangle room = grid.control().getClientArea();
      Point wanted = bar.computeSize(SWT.DEFAULT, SWT.DEFAULT);
      int width = Math.min(wanted.x, room.width);
      bar.setBounds(room.width - width, Math.max(0, room.height - wanted.y), width, wanted.y);
      bar.moveAbove(null);
    }
  }

  private void key(int keyCode, boolean back) {
    switch (keyCode) {
      case SWT.CR, SWT.KEYPAD_CR, SWT.F3 -> go(back ? -1 : 1);
      case SWT.ARROW_DOWN -> go(1);
      case SWT.ARROW_UP -> go(-1);
      case SWT.ESC -> close();
      default -> {
        // typed
      }
    }
  }

  private void changed() {
    String wanted = only.getSelection() ? text.getText() : "";
    if (!grid.arranged().wanted().equals(wanted.strip().toLowerCase(Locale.ROOT))) {
      grid.arrange(() -> grid.arranged().want(wanted));
    }
    if (!text.getText().isBlank() && (grid.place().isEmpty() || !holds(grid.place().get()))) {
      go(1);
    }
    tell();
  }

  private boolean holds(Point place) {
    return grid.arranged().cell(place.x, place.y).words().toLowerCase(Locale.ROOT).contains(text.getText().strip().toLowerCase(Locale.ROOT));
  }

  /** Goes to the next or the previous cell that holds the text, past the end to the other one. */
  void go(int step) {
    ArrangedModel model = grid.arranged();
    long all = (long) model.columns() * model.rows();
    if (!isOpen() || text.getText().isBlank() || all == 0) {
      return;
    }
    long at = grid.place().map(p -> (long) p.y * model.columns() + p.x).orElse(step > 0 ? -1L : 0L);
    for (long i = 1; i <= all; i++) {
      long next = Math.floorMod(at + i * step, all);
      Point place = new Point((int) (next % model.columns()), (int) (next / model.columns()));
      if (holds(place)) {
        grid.selectPlace(place.x, place.y);
        tell();
        return;
      }
    }
  }

  /** Says how many rows hold the text. */
  private void tell() {
    ArrangedModel model = grid.arranged();
    long rows = text.getText().isBlank() ? 0
        : java.util.stream.IntStream.range(0, model.rows()).filter(row -> java.util.stream.IntStream.range(0, model.columns()).anyMatch(c -> holds(new Point(c, row)))).count();
    found.setText(text.getText().isBlank() ? "" : Words.of("find.rows", rows, model.base().rows() - model.base().lastRows()));
    bar.layout();
    place();
  }

  /** Closes it; all rows are shown again and the grid has the keyboard. */
  void close() {
    if (isOpen()) {
      bar.dispose();
      if (!grid.arranged().wanted().isEmpty()) {
        grid.arrange(() -> grid.arranged().want(""));
      }
      grid.control().setFocus();
    }
  }

  /** What is searched for; empty when the bar is closed. */
  Optional<String> wanted() {
    return isOpen() ? Optional.of(text.getText()) : Optional.empty();
  }
}
