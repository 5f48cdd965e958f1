package daubline.ui.compare;

import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.study.Chosen;
import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** The reasons for one cell of the comparison. */
public final class ReasonsView extends ViewPart {

  private final ReasonsModel model = new ReasonsModel();
  private final Runnable refresher = this::refresh;
  private Described described;
  private Grid grid;

  @Override
  public void createPartControl(Composite parent) {
    described = new Described(parent);
    grid = new Grid(described.body(), Words.of("reasons.name"), model);
    grid.control().setData("id", "reasons");
    grid.onSelect(() -> grid.selected().ifPresent(p -> Chosen.set(model.item(p.y).trail())));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.comparison");
    Selection.onChange(refresher);
    refresh();
  }

  private void refresh() {
    if (grid.control().isDisposed()) {
      return;
    }
    Comparison c = Selection.get().orElse(null);
    model.show(c == null ? List.of() : c.criteria());
    grid.rebuild();
    described.say(c == null ? Words.of("reasons.none") : c.trialName() + " – " + c.sheetName() + ": " + (c.isTested()
        ? Words.of("pair.tip", PairModel.whole(c.agreement()), PairModel.whole(c.low()), PairModel.whole(c.high()), PairModel.percent(c.coverage()))
        : Words.of("pair.nothing")));
  }

  /** The grid; for tests. */
  public Grid grid() {
    return grid;
  }

  @Override
  public void setFocus() {
    grid.control().setFocus();
  }

  @Override
  public void dispose() {
    Selection.remove(refresher);
    super.dispose();
  }
}
