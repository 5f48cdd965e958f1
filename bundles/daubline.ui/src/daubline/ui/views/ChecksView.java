package daubline.ui.views;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.model.Identified;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.sheet.Jump;
import daubline.ui.sheet.Mends;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** What the checks found; Enter or a double click goes to the place. */
public final class ChecksView extends StudyPart {

  private final ChecksModel model = new ChecksModel();
  private Described described;
  private Grid grid;
  private List<Finding> shown = List.of();
  private Optional<OpenStudy> of = Optional.empty();
  private int hidden;

  @Override
  protected void fill(Composite area) {
    described = new Described(area);
    grid = new Grid(described.body(), Words.of("checks.name"), model);
    grid.control().setData("id", "checks");
    grid.control().addListener(SWT.MouseDoubleClick, e -> jump());
    grid.control().addListener(SWT.KeyDown, e -> {
      if (e.keyCode == '1' && e.stateMask == SWT.MOD1) {
        offer();
      }
    });
    grid.onEnter(this::jump);
    grid.offer(this::mends);
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    List<Finding> now = study.map(OpenStudy::findings).orElse(List.of());
    int covered = study.map(OpenStudy::hiddenFindings).orElse(0);
    if (study.equals(of) && now.equals(shown) && covered == hidden && grid.model().rows() == now.size()) {
      return;
    }
    of = study;
    shown = now;
    hidden = covered;
    model.show(now);
    grid.rebuild();
    long errors = now.stream().filter(f -> f.severity() == Severity.ERROR).count();
    long warnings = now.stream().filter(f -> f.severity() == Severity.WARNING).count();
    described.say(study.isEmpty() ? Words.of("none.open") : Words.of("checks.count", errors, warnings, now.size() - errors - warnings)
        + (hidden > 0 ? " " + Words.of("checks.hidden", hidden) : ""));
  }

  /** Goes to the place of the selected finding; returns whether there is one. */
  public boolean jump() {
    return grid.selected().map(p -> model.item(p.y)).filter(f -> !f.subject().isEmpty())
        .flatMap(f -> study().flatMap(s -> s.session().find(f.subject(), Identified.class)).map(o -> Jump.to(o, f.variable()))).orElse(false);
  }

  /** What can be done at once about the selected finding. */
  List<Mends.Mend> mends() {
    return grid.selected().map(p -> model.item(p.y)).flatMap(f -> study().map(s -> Mends.of(s, f))).orElse(List.of());
  }

  private void mends(Menu menu) {
    List<Mends.Mend> found = mends();
    for (Mends.Mend mend : found) {
      MenuItem item = new MenuItem(menu, SWT.PUSH);
      item.setText(mend.label().replace("&", "&&"));
      item.addListener(SWT.Selection, e -> mend.action().run());
    }
    MenuItem there = new MenuItem(menu, SWT.PUSH);
    there.setText(Words.of("mend.there"));
    there.setEnabled(grid.selected().isPresent());
    there.addListener(SWT.Selection, e -> jump());
  }

  /** Shows what can be done about the selected finding in a menu of its own. */
  private void offer() {
    Menu menu = new Menu(grid.control().getShell(), SWT.POP_UP);
    mends(menu);
    menu.addListener(SWT.Hide, e -> menu.getDisplay().asyncExec(menu::dispose));
    menu.setLocation(grid.control().toDisplay(grid.below()));
    menu.setVisible(true);
  }

  /** The grid; for tests. */
  public Grid grid() {
    return grid;
  }

  @Override
  protected boolean isShownBlind() {
    return true;
  }

  @Override
  public void setFocus() {
    grid.control().setFocus();
  }
}
