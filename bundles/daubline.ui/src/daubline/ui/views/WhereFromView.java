package daubline.ui.views;

import daubline.base.Trail;
import daubline.model.Identified;
import daubline.ui.Words;
import daubline.ui.look.Described;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.look.Themes;
import daubline.ui.sheet.Jump;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.study.WhenSeen;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** Where the selected number came from: what it is made of, down to typed texts, citations and people. */
public final class WhereFromView extends ViewPart {

  /** Lines that are open at first; what lies deeper is opened by hand. */
  private static final int MANY = 40;

  private final Runnable refresher = this::follow;
  private final Runnable blindness = this::cover;
  private boolean covered;
  private boolean isBehind;
  private WhenSeen whenSeen;
  private Described described;
  private Veil veil;
  private final TrailSteps content = new TrailSteps();
  private TreeViewer tree;

  @Override
  public void createPartControl(Composite parent) {
    veil = new Veil(parent);
    described = new Described(veil.body());
    Composite page = Pages.tight(described.body(), 1);
    Composite bar = new Composite(page, SWT.NONE);
    bar.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    tree = new TreeViewer(page, SWT.V_SCROLL | SWT.H_SCROLL | SWT.FULL_SELECTION);
    tree.setContentProvider(content);
    tree.setLabelProvider(new Labels());
    ColumnViewerToolTipSupport.enableFor(tree);
    tree.addOpenListener(e -> open());
    tree.getControl().setData("id", "wherefrom");
    tree.getControl().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    new TreeFind(bar, tree, WhereFromView::line);
    Pages.named(tree.getControl(), Words.of("origin.name"), "");
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.whereFrom");
    whenSeen = new WhenSeen(this, this::refresh);
    Chosen.onChange(refresher);
    Studies.get().onChange(blindness);
    Themes.onChange(tree.getControl(), tree::refresh);
    refresh();
  }

  private static String line(Object step) {
    Trail trail = ((TrailSteps.Step) step).trail();
    return trail.value().isEmpty() ? trail.what() : trail.what() + ": " + trail.value();
  }

  /** Follows what is selected once that is done: a long trail takes a while to show, and a grid that is filled anew selects more than once. */
  private void follow() {
    if (!isBehind && !tree.getControl().isDisposed()) {
      isBehind = true;
      tree.getControl().getDisplay().asyncExec(() -> {
        isBehind = false;
        whenSeen.ask();
      });
    }
  }

  private void refresh() {
    if (!tree.getControl().isDisposed()) {
      covered = veil.fall(Studies.get().current());
      tree.setInput(Chosen.trail().filter(t -> !covered).map(t -> t.in(Words.wording())));
      tree.setExpandedElements(content.opened(MANY).toArray());
      described.say(Chosen.trail().isPresent() ? "" : Words.of("origin.none"));
    }
  }

  /** Covers or shows the origin when somebody begins or ends to record blind. */
  private void cover() {
    if (!tree.getControl().isDisposed() && covered != Studies.get().current().flatMap(OpenStudy::blind).isPresent()) {
      refresh();
    }
  }

  private void open() {
    if (tree.getStructuredSelection().getFirstElement() instanceof TrailSteps.Step step && !step.trail().subject().isEmpty()) {
      Studies.get().current().flatMap(s -> s.session().find(step.trail().subject(), Identified.class)).ifPresent(o -> Jump.to(o, ""));
    }
  }

  @Override
  public void setFocus() {
    tree.getControl().setFocus();
  }

  @Override
  public void dispose() {
    Chosen.remove(refresher);
    Studies.get().remove(blindness);
    whenSeen.dispose();
    super.dispose();
  }

  private static final class Labels extends StyledCellLabelProvider {
    /** The whole step, which may be wider than the view. */
    @Override
    public String getToolTipText(Object element) {
      return line(element);
    }

    @Override
    public void update(ViewerCell cell) {
      Trail trail = ((TrailSteps.Step) cell.getElement()).trail();
      String what = trail.what();
      cell.setText(trail.value().isEmpty() ? what : what + ":  " + trail.value());
      cell.setStyleRanges(trail.value().isEmpty() ? null : new StyleRange[] {new StyleRange(0, what.length() + 1, Hue.QUIET.color(), null)});
      super.update(cell);
    }
  }
}
