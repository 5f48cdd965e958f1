package daubline.ui.views;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.model.Identified;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.sheet.Jump;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

/** What the checks found; Enter or a double click goes to the place. */
public final class ChecksView extends StudyPart {

  private final ChecksModel model = new ChecksModel();
  private Described described;
  private Grid grid;
  private List<Finding> shown = List.of();
  private int hidden;

  @Override
  protected void fill(Composite area) {
    described = new Described(area);
    grid = new Grid(described.body(), Words.of("checks.name"), model);
    grid.control().setData("id", "checks");
    grid.control().addListener(SWT.MouseDoubleClick, e -> jump());
    grid.control().addListener(SWT.KeyDown, e -> {
      if (e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR) {
        jump();
      }
    });
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    List<Finding> now = study.map(OpenStudy::findings).orElse(List.of());
    int covered = study.map(OpenStudy::hiddenFindings).orElse(0);
    if (now.equals(shown) && covered == hidden && grid.model().rows() == now.size()) {
      return;
    }
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
