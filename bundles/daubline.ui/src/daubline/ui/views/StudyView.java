package daubline.ui.views;

import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.look.Themes;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.study.WhenSeen;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** The open studies as a tree; a double click or Enter opens what can be edited. */
public final class StudyView extends ViewPart {

  private static final int FEW = 4;

  private final Runnable refresher = () -> this.seen.ask();
  private WhenSeen seen;
  private TreeViewer tree;
  private int studies;

  @Override
  public void createPartControl(Composite parent) {
    Composite page = Pages.tight(parent, 1);
    Composite bar = new Composite(page, SWT.NONE);
    bar.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    tree = new TreeViewer(page, SWT.V_SCROLL | SWT.H_SCROLL | SWT.MULTI);
    StudyTree content = new StudyTree();
    tree.setUseHashlookup(true);
    tree.setContentProvider(content);
    tree.setLabelProvider(content);
    tree.setInput(Studies.get());
    tree.addOpenListener(e -> open(tree.getStructuredSelection()));
    tree.addSelectionChangedListener(e -> Sheets.studyOf(tree.getStructuredSelection().getFirstElement()).ifPresent(Studies.get()::setCurrent));
    tree.getControl().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    new TreeFind(bar, tree, StudyTree::text);
    Pages.named(tree.getControl(), Words.of("tree.name"), "");
    MenuManager menu = new MenuManager();
    tree.getControl().setMenu(menu.createContextMenu(tree.getControl()));
    getSite().registerContextMenu(menu, tree);
    getSite().setSelectionProvider(tree);
    seen = new WhenSeen(this, this::refresh);
    Studies.get().onChange(refresher);
    Themes.onChange(tree.getControl(), tree::refresh);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.study");
    refresh();
  }

  private static void open(IStructuredSelection selection) {
    switch (selection.getFirstElement()) {
      case EObject object -> Sheets.open(object);
      case OpenStudy study -> Sheets.open(study.session().study());
      case null, default -> {
        // a branch only opens and closes
      }
    }
  }

  private void refresh() {
    if (tree.getControl().isDisposed()) {
      return;
    }
    tree.refresh();
    int now = Studies.get().all().size();
    if (now > studies) {
      OpenStudy latest = Studies.get().all().get(now - 1);
      tree.expandToLevel(latest, 1);
      Branch.of(latest).stream().filter(b -> b.content().size() <= FEW).forEach(b -> tree.expandToLevel(b, isLong(b) ? 2 : TreeViewer.ALL_LEVELS));
      tree.setSelection(new StructuredSelection(latest), true);
    }
    studies = now;
  }

  /** Whether a series has so many trials that they are taken together; then they stay closed. */
  private static boolean isLong(Branch branch) {
    return branch.content().stream().anyMatch(o -> o instanceof Series series && series.getTrials().size() > Span.MOST);
  }

  /** Selects an object and makes it visible. */
  public void reveal(EObject object) {
    tree.setSelection(new StructuredSelection(object), true);
  }

  /** The tree itself; for tests. */
  public Tree tree() {
    return tree.getTree();
  }

  @Override
  public void setFocus() {
    tree.getControl().setFocus();
  }

  @Override
  public void dispose() {
    Studies.get().remove(refresher);
    seen.dispose();
    super.dispose();
  }
}
