package daubline.ui.views;

import daubline.analysis.EntryOrigins;
import daubline.base.Trail;
import daubline.model.Identified;
import daubline.model.Reading;
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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.TreePath;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
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
  private static final int MANY = 150;

  private final Runnable refresher = this::follow;
  private final Runnable blindness = this::cover;
  private boolean covered;
  private boolean isBehind;
  private WhenSeen whenSeen;
  private Described described;
  private Veil veil;
  private final Content content = new Content();
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
    tree.setComparer(new Itself());
    tree.setLabelProvider(new Labels());
    ColumnViewerToolTipSupport.enableFor(tree);
    tree.addOpenListener(e -> open());
    tree.getControl().setData("id", "wherefrom");
    tree.getControl().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    new TreeFind(bar, tree, line -> ((Trail) line).value().isEmpty() ? ((Trail) line).what() : ((Trail) line).what() + ": " + ((Trail) line).value());
    Pages.named(tree.getControl(), Words.of("origin.name"), "");
    PlatformUI.getWorkbench().getHelpSystem().setHelp(parent, "daubline.help.whereFrom");
    whenSeen = new WhenSeen(this, this::refresh);
    Chosen.onChange(refresher);
    Studies.get().onChange(blindness);
    Themes.onChange(tree.getControl(), tree::refresh);
    refresh();
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
      tree.setInput(Chosen.trail().filter(t -> !covered).map(t -> new Trail[] {t.in(Words.wording())}).orElse(new Trail[0]));
      tree.setExpandedTreePaths(content.opened(tree.getInput()).toArray(TreePath[]::new));
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
    if (tree.getStructuredSelection().getFirstElement() instanceof Trail trail && !trail.subject().isEmpty()) {
      Studies.get().current().flatMap(s -> s.session().find(trail.subject(), Identified.class)).ifPresent(o -> Jump.to(o, ""));
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

  private static final class Content implements ITreeContentProvider {

    /** What steps were made of, as long as the same number is shown: the tree asks for each more than once. */
    private final Map<Trail, List<Trail>> known = new IdentityHashMap<>();
    private Optional<OpenStudy> study = Optional.empty();
    private Optional<EntryOrigins> origins = Optional.empty();

    @Override
    public void inputChanged(Viewer viewer, Object before, Object now) {
      known.clear();
      study = Studies.get().current();
      origins = study.map(s -> new EntryOrigins(s.session()));
    }

    @Override
    public Object[] getElements(Object input) {
      return (Object[]) input;
    }

    @Override
    public Object[] getChildren(Object parent) {
      return from((Trail) parent).toArray();
    }

    /** What a step was made of, with what its entry says of itself: an entry alone goes on with that, a value adds what it is part of and what stood there before. */
    private List<Trail> from(Trail step) {
      return known.computeIfAbsent(step, s -> {
        List<Trail> from = new ArrayList<>(s.from());
        entry(s).filter(o -> o instanceof Reading || from.isEmpty())
            .ifPresent(o -> origins.orElseThrow().of(o, s.what(), s.value()).from().stream().map(t -> t.in(Words.wording()))
                .filter(t -> !from.contains(t) && !t.subject().equals(s.subject())).forEach(from::add));
        return from;
      });
    }

    /** What is open at first, the nearest steps before those that lie deeper: the number, and below it what tells by itself what it was made of. */
    List<TreePath> opened(Object input) {
      List<TreePath> opened = new ArrayList<>();
      Deque<TreePath> waiting = new ArrayDeque<>();
      Arrays.stream(getElements(input)).forEach(root -> waiting.add(new TreePath(new Object[] {root})));
      int lines = waiting.size();
      while (!waiting.isEmpty() && lines < MANY) {
        TreePath path = waiting.remove();
        Trail step = (Trail) path.getLastSegment();
        // an entry that is only named goes on to its like, and they to theirs, without end
        if (path.getSegmentCount() == 1 || !step.from().isEmpty() || entry(step).filter(Reading.class::isInstance).isPresent()) {
          opened.add(path);
          from(step).forEach(s -> waiting.add(path.createChildPath(s)));
          lines += from(step).size();
        }
      }
      return opened;
    }

    private Optional<Identified> entry(Trail step) {
      return step.subject().isEmpty() ? Optional.empty() : study.flatMap(s -> s.session().find(step.subject(), Identified.class));
    }

    @Override
    public Object getParent(Object element) {
      return null;
    }

    @Override
    public boolean hasChildren(Object element) {
      return !from((Trail) element).isEmpty();
    }
  }

  /** Steps alike at two places are two; to compare all that they rest on would take long. */
  private static final class Itself implements IElementComparer {

    @Override
    public boolean equals(Object a, Object b) {
      return a == b;
    }

    @Override
    public int hashCode(Object element) {
      return System.identityHashCode(element);
    }
  }

  private static final class Labels extends StyledCellLabelProvider {
    /** The whole step, which may be wider than the view. */
    @Override
    public String getToolTipText(Object element) {
      Trail trail = (Trail) element;
      return trail.value().isEmpty() ? trail.what() : trail.what() + ": " + trail.value();
    }

    @Override
    public void update(ViewerCell cell) {
      Trail trail = (Trail) cell.getElement();
      String what = trail.what();
      cell.setText(trail.value().isEmpty() ? what : what + ":  " + trail.value());
      cell.setStyleRanges(trail.value().isEmpty() ? null : new StyleRange[] {new StyleRange(0, what.length() + 1, Hue.QUIET.color(), null)});
      super.update(cell);
    }
  }
}
