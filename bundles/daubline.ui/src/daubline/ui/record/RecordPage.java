package daubline.ui.record;

import daubline.analysis.EntryOrigins;
import daubline.base.Finding;
import daubline.base.Trail;
import daubline.model.Reading;
import daubline.record.EntryTable;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.grid.Grid;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hint;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.sheet.Sheets;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.PlatformUI;

/** A page with one table that is filled in by keyboard alone, a bar of actions above it and what a cell asks for below. */
public class RecordPage implements Page {

  private static final int SUMMARY = 300;

  private final EntryTable table;
  private final Composite page;
  private final Composite bar;
  private final Label summary;
  private final Grid grid;
  private final Hint hint;
  private final Button words;
  private final Button remove;
  /** Whether something changed while a cell was open; shown when it is closed, so as not to disturb the typing. */
  private boolean postponed;
  private boolean rebuilding;
  /** What was said about an action, and the cell that was selected then; null when nothing was. */
  private String announced;
  private Optional<Point> announcedAt = Optional.empty();

  /** A page for a table. */
  public RecordPage(Composite parent, EntryTable table) {
    this.table = table;
    page = Pages.tight(parent, 1);
    bar = new Composite(page, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.center = true;
    layout.spacing = 6;
    bar.setLayout(layout);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    summary = Pages.text(page, "", Fonts.PLAIN.font(), SUMMARY);
    summary.setData("id", table.id() + ".summary");
    WhereFrom.on(summary, this::summed);
    ((GridData) summary.getLayoutData()).horizontalIndent = 6;
    summarise();
    grid = new Grid(page, Words.of("record." + table.id()), new EntryModel(table));
    grid.control().setData("id", table.id());
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    hint = new Hint(page, table.id() + ".message");
    words = button("record.words", this::offerWords);
    remove = table.isShortened() ? button("record.remove", this::removeRow) : null;
    grid.onSelect(this::tell);
    grid.control().addListener(SWT.KeyDown, e -> {
      if (e.keyCode == SWT.F4) {
        offerWords();
      }
    });
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.record_" + table.id());
  }

  /** What the table says as a whole leads to its rows. */
  private Optional<Trail> summed() {
    String said = table.summary();
    return said.isEmpty() ? Optional.empty() : Optional.of(Trail.reckoned(Words.of("record." + table.id()), said, "", java.util.stream.IntStream.range(0, table.rows()).boxed()
        .flatMap(row -> table.object(row).stream()).flatMap(o -> Sheets.studyOf(o).stream().map(s -> new EntryOrigins(s.session()).of(o, Words.of("origin.entry"), ""))).toList()));
  }

  /** What the table says as a whole stands above it, and takes no room when there is nothing to say. */
  private void summarise() {
    Optional<Finding> problem = table.problem();
    String text = problem.map(f -> "△ " + Words.said(f)).orElseGet(table::summary);
    if (!text.equals(summary.getToolTipText()) || summary.getText().isEmpty()) {
      summary.setText(text.replace("&", "&&"));
      summary.setToolTipText(text.isEmpty() ? null : text.replace("&", "&&"));
      summary.setForeground(problem.isPresent() ? Hue.LINING.color() : Hue.INK.color());
      summary.setVisible(!text.isEmpty());
      ((GridData) summary.getLayoutData()).exclude = text.isEmpty();
      page.layout();
    }
  }

  /** Adds a button to the bar; the key's text is its label, key.tip what it does. */
  protected final Button button(String key, Runnable action) {
    Button button = new Button(bar, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    Pages.named(button, Words.of(key), Words.orElse(key + ".tip", ""));
    button.addListener(SWT.Selection, e -> action.run());
    return button;
  }

  /** The bar above the table. */
  protected final Composite bar() {
    return bar;
  }

  /** The table. */
  protected final Grid grid() {
    return grid;
  }

  /** Offers the words of the selected cell in a menu; each of them can be typed as well, or only begun. */
  private void offerWords() {
    Optional<Point> cell = grid.selected();
    List<String> offered = cell.map(p -> table.choices(p.y, p.x)).orElse(List.of());
    if (offered.isEmpty() || !table.isEditable(cell.get().y, cell.get().x)) {
      return;
    }
    Menu menu = new Menu(words);
    for (String word : offered) {
      MenuItem item = new MenuItem(menu, SWT.PUSH);
      item.setText(word.replace("&", "&&"));
      item.addListener(SWT.Selection, e -> {
        table.put(cell.get().y, cell.get().x, word);
        refresh();
        grid.control().setFocus();
      });
    }
    menu.addListener(SWT.Hide, e -> menu.getDisplay().asyncExec(menu::dispose));
    menu.setLocation(words.toDisplay(0, words.getSize().y));
    menu.setVisible(true);
  }

  private void removeRow() {
    grid.selected().filter(p -> table.canRemove(p.y)).ifPresent(p -> table.remove(p.y));
    refresh();
    grid.control().setFocus();
  }

  private void tell() {
    if (rebuilding) {
      return;
    }
    if (postponed && !grid.isOpen()) {
      refresh();
      return;
    }
    Optional<Point> cell = grid.selected();
    List<String> offered = cell.map(p -> table.choices(p.y, p.x)).orElse(List.of());
    words.setEnabled(!offered.isEmpty());
    if (remove != null) {
      remove.setEnabled(cell.filter(p -> table.canRemove(p.y)).isPresent());
    }
    if (announced != null && cell.equals(announcedAt)) {
      return;
    }
    announced = null;
    Optional<Finding> finding = cell.flatMap(p -> table.finding(p.y, p.x));
    hint.say(finding.map(f -> "△ " + Words.said(f)).orElseGet(() -> cell.map(p -> table.about(p.x)).orElse("")
        + (offered.isEmpty() ? "" : " " + Words.of("record.oneOf", String.join(", ", offered)))).strip(), finding.isPresent());
  }

  /** Says something below the table; it stands there until another cell is selected. */
  public final void say(String text, boolean wrong) {
    announced = text;
    announcedAt = grid.selected();
    hint.say(text, wrong);
  }

  /** Adds a listener told when another row is selected. */
  public final void onSelect(Runnable listener) {
    grid.onSelect(listener);
  }

  /** The thing of the selected row. */
  public final Optional<EObject> selected() {
    return grid.selected().flatMap(p -> table.object(p.y));
  }

  @Override
  public boolean reveal(EObject object) {
    for (EObject wanted = object; wanted != null; wanted = wanted instanceof Reading || wanted.eContainer() != null ? wanted.eContainer() : null) {
      for (int row = 0; row < table.rows(); row++) {
        if (table.object(row).orElse(null) == wanted) {
          grid.select(0, row);
          return true;
        }
      }
    }
    return false;
  }

  @Override
  public final Control control() {
    return page;
  }

  @Override
  public void refresh() {
    postponed = grid.isOpen();
    if (postponed) {
      grid.control().redraw();
      return;
    }
    Optional<Point> before = grid.selected();
    table.refresh();
    summarise();
    // for a moment nothing is selected, which is nobody's doing
    rebuilding = true;
    grid.rebuild();
    if (grid.selected().isEmpty()) {
      before.filter(p -> p.y < table.rows()).ifPresent(p -> grid.select(p.x, p.y));
    }
    rebuilding = false;
    tell();
  }

  @Override
  public void focus() {
    grid.control().setFocus();
    if (grid.selected().isEmpty() && table.rows() > 0) {
      grid.select(0, table.rows() - 1);
    }
  }
}
