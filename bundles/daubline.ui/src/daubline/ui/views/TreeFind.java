package daubline.ui.views;

import daubline.ui.Words;
import daubline.ui.edit.EditTarget;
import daubline.ui.edit.Edits;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The commands of the Edit menu for a tree: copying its lines, and a bar above it in which something is searched for. */
final class TreeFind implements EditTarget {

  private final TreeViewer tree;
  private final Function<Object, String> words;
  private final Composite bar;
  private final Text text;
  private final Label none;

  /** Lays a bar, hidden at first, over the tree; the parent's layout becomes one column. */
  TreeFind(Composite bar, TreeViewer tree, Function<Object, String> words) {
    this.bar = bar;
    this.tree = tree;
    this.words = words;
    bar.setBackground(Hue.BAND.color());
    bar.setLayout(new GridLayout(2, false));
    text = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.BORDER);
    text.setMessage(Words.of("find.text"));
    text.setData("id", "tree-find");
    text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    Pages.named(text, Words.of("find.tree"), Words.of("find.text.tip"));
    none = new Label(bar, SWT.NONE);
    none.setBackground(Hue.BAND.color());
    none.setForeground(Hue.LINING.color());
    text.addListener(SWT.Modify, e -> go(0));
    text.addListener(SWT.KeyDown, this::key);
    text.addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_RETURN && e.detail != SWT.TRAVERSE_ESCAPE);
    show(false);
    EditTarget.on(tree.getControl(), this);
  }

  private void key(Event e) {
    switch (e.keyCode) {
      case SWT.CR, SWT.KEYPAD_CR, SWT.F3 -> go((e.stateMask & SWT.SHIFT) != 0 ? -1 : 1);
      case SWT.ARROW_DOWN -> go(1);
      case SWT.ARROW_UP -> go(-1);
      case SWT.ESC -> {
        show(false);
        tree.getControl().setFocus();
      }
      default -> {
        // typed
      }
    }
  }

  private void show(boolean shown) {
    ((GridData) bar.getLayoutData()).exclude = !shown;
    bar.setVisible(shown);
    bar.getParent().layout();
  }

  /** Goes to the next line that holds the text, of all lines whether they are open or not; by 0 steps it may stay. */
  private void go(int step) {
    String wanted = text.getText().strip().toLowerCase(Locale.ROOT);
    List<Object> all = new ArrayList<>();
    ITreeContentProvider content = (ITreeContentProvider) tree.getContentProvider();
    for (Object root : content.getElements(tree.getInput())) {
      collect(root, content, all);
    }
    int at = all.indexOf(tree.getStructuredSelection().getFirstElement());
    boolean found = wanted.isEmpty();
    for (int i = step == 0 ? 0 : 1; !found && i <= all.size(); i++) {
      Object next = all.get(Math.floorMod(Math.max(0, at) + i * (step < 0 ? -1 : 1), all.size()));
      if (words.apply(next).toLowerCase(Locale.ROOT).contains(wanted)) {
        tree.setSelection(new StructuredSelection(next), true);
        found = true;
      }
    }
    none.setText(found ? "" : Words.of("find.none"));
    bar.layout();
  }

  private static void collect(Object element, ITreeContentProvider content, List<Object> all) {
    all.add(element);
    for (Object child : content.getChildren(element)) {
      collect(child, content, all);
    }
  }

  @Override
  public boolean can(Deed deed) {
    return switch (deed) {
      case COPY -> !tree.getStructuredSelection().isEmpty();
      case FIND -> tree.getTree().getItemCount() > 0;
      case SELECT_ALL -> tree.getTree().getItemCount() > 0 && (tree.getTree().getStyle() & SWT.MULTI) != 0;
      case CUT, PASTE, DELETE -> false;
    };
  }

  @Override
  public void act(Deed deed) {
    switch (deed) {
      case COPY -> Edits.copy(((List<?>) tree.getStructuredSelection().toList()).stream().map(words::apply).collect(Collectors.joining("\n")));
      case SELECT_ALL -> tree.getTree().selectAll();
      case FIND -> {
        show(true);
        text.setFocus();
        text.selectAll();
      }
      case CUT, PASTE, DELETE -> {
        // other commands do that
      }
    }
  }
}
