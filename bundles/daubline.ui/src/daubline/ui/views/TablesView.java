package daubline.ui.views;

import daubline.analysis.StudyResults;
import daubline.export.Table;
import daubline.export.TableSpec;
import daubline.export.Tables;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The tables of the publication, as they will be written. */
public final class TablesView extends StudyPart {

  private final TableModel model = new TableModel();
  private Combo choice;
  private Label caption;
  private Grid grid;
  private Composite holder;
  private StudyResults shown;

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.plain(area, 1);
    choice = new Combo(page, SWT.READ_ONLY);
    choice.setItems(Tables.all().stream().map(TableSpec::title).map(Words::said).toArray(String[]::new));
    choice.select(0);
    choice.setData("id", "table");
    Pages.named(choice, Words.of("tables.choose"), "");
    choice.addListener(SWT.Selection, e -> rebuild());
    caption = Pages.text(page, "", Fonts.PLAIN.font(), 200);
    holder = new Composite(page, SWT.NONE);
    holder.setLayout(new org.eclipse.swt.layout.FillLayout());
    holder.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    holder.setBackground(Hue.PAPER.color());
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    StudyResults now = study.flatMap(OpenStudy::results).orElse(null);
    if (now != shown) {
      shown = now;
      rebuild();
    }
  }

  /** Shows a table by its short name. */
  public void choose(String id) {
    java.util.stream.IntStream.range(0, Tables.all().size()).filter(i -> Tables.all().get(i).id().equals(id)).findFirst().ifPresent(i -> {
      choice.select(i);
      rebuild();
    });
  }

  private void rebuild() {
    Table table = shown == null ? null : Tables.all().get(choice.getSelectionIndex()).build(shown).in(Words.wording(shown));
    model.show(table, shown);
    caption.setText(table == null ? Words.of("none.open") : table.caption() + (table.notes().isEmpty() ? "" : "\n" + String.join("\n", table.notes())));
    String wanted = table == null ? "" : "table-" + table.id();
    if (grid != null && wanted.equals(grid.control().getData("id"))) {
      // the same table of newer results: what is selected and searched for stays
      grid.rebuild();
      return;
    }
    if (grid != null) {
      grid.control().dispose();
      grid = null;
    }
    if (table != null) {
      grid = new Grid(holder, table.title(), model);
      grid.control().setData("id", wanted);
    }
    holder.getParent().layout(true, true);
  }

  @Override
  public void setFocus() {
    choice.setFocus();
  }
}
