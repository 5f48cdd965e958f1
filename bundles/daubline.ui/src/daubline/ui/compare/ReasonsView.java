package daubline.ui.compare;

import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.CriterionResult;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.sheet.Opening;
import daubline.ui.sheet.Opening.Goal;
import daubline.ui.study.Chosen;
import daubline.ui.study.Compared;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.Veil;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** The reasons for one cell of the comparison; a row leads on to Where From. */
public final class ReasonsView extends ViewPart {

  private final ReasonsModel model = new ReasonsModel();
  private final Runnable refresher = this::refresh;
  private final Runnable blindness = this::cover;
  private Described described;
  private Veil veil;
  private Grid grid;

  @Override
  public void createPartControl(Composite parent) {
    veil = new Veil(parent);
    described = new Described(veil.body());
    grid = new Grid(described.body(), Words.of("reasons.name"), model);
    grid.control().setData("id", "reasons");
    grid.onSelect(this::chosen);
    Opening.on(grid, p -> Selection.get().map(c -> goals(c, model.item(p.y))).orElse(List.of()));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.comparison");
    Selection.onChange(refresher);
    Studies.get().onChange(blindness);
    cover();
    refresh();
  }

  /** The property that a criterion reads, on the sheet and in the trial. */
  private static List<Goal> goals(Comparison c, CriterionResult result) {
    String variable = Criteria.all().stream().filter(k -> k.id().equals(result.criterion())).flatMap(k -> k.inputs().stream()).findFirst().orElse("");
    return List.of(new Goal(c.sheet(), variable), new Goal(c.trial(), variable));
  }

  private void cover() {
    if (!grid.control().isDisposed()) {
      veil.fall(Studies.get().current());
    }
  }

  private void refresh() {
    if (grid.control().isDisposed()) {
      return;
    }
    Comparison c = Selection.get().orElse(null);
    ComparisonSettings settings = Studies.get().current().flatMap(OpenStudy::compared).map(Compared::settings).orElse(ComparisonSettings.standard());
    model.show(c, settings);
    grid.rebuild();
    described.say(c == null ? Words.of("reasons.none") : c.trialName() + " – " + c.sheetName() + ": "
        + (c.isTested() ? PairModel.said(c) : Words.of("pair.nothing")));
    for (int row = 0; row < model.rows(); row++) {
      if (model.item(row).criterion().equals(Selection.criterion())) {
        grid.select(1, row);
      }
    }
  }

  private void chosen() {
    grid.selected().ifPresent(p -> {
      Chosen.set(model.origin(p.x, p.y).orElse(null));
      bringWhereFrom();
    });
  }

  /** Shows Where From where it lies under another view, but never on top of the reasons themselves. */
  private void bringWhereFrom() {
    IWorkbenchPage page = getSite().getPage();
    IViewPart[] stack = page.getViewStack(this);
    boolean beneath = stack != null && Arrays.stream(stack).anyMatch(v -> v.getSite().getId().equals(Parts.WHERE_FROM));
    if (page.findViewReference(Parts.WHERE_FROM) != null && !beneath) {
      try {
        page.showView(Parts.WHERE_FROM, null, IWorkbenchPage.VIEW_VISIBLE);
      } catch (PartInitException e) {
        Platform.getLog(ReasonsView.class).warn(e.getMessage(), e);
      }
    }
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
    Studies.get().remove(blindness);
    super.dispose();
  }
}
