package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.look.Passage;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Start;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** On 1366 × 768 no text is cut, and every control has a name; run in both languages and at 150 % too. */
class TextFitsTest {

  private static final List<String> PERSPECTIVES = List.of("evidence", "plan", "runday", "record", "compare", "publish");

  @AfterEach
  void clear() {
    Window.clear();
  }

  @Test
  void noTextIsCutAndEveryControlHasAName() throws Exception {
    Window.shell().setMaximized(false);
    Window.shell().setSize(1366, 768);
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    List<String> complaints = new ArrayList<>();
    for (String perspective : PERSPECTIVES) {
      PlatformUI.getWorkbench().showPerspective("daubline.app." + perspective, Window.page().getWorkbenchWindow());
      Window.page().resetPerspective();
      Window.pump();
      Window.all(Window.shell()).stream().filter(c -> c.isVisible() && c instanceof CTabFolder).flatMap(c -> shortened((CTabFolder) c).stream())
          .forEach(text -> complaints.add(perspective + ": title shortened or out of sight: " + text));
      Start.hearthside();
      inspect(perspective + ", start page", complaints);
    }
    new WindowWalk(study, 1, where -> inspect(where, complaints));
    assertTrue(complaints.isEmpty(), String.join("\n", complaints));
  }

  private static void inspect(String where, List<String> complaints) {
    Window.pump();
    for (Control control : Window.all(Window.shell())) {
      if (control.isVisible() && isOurs(control)) {
        cut(control).ifPresent(text -> complaints.add(where + ": cut: " + text));
        if (!isNamed(control)) {
          complaints.add(where + ": no name: " + control);
        }
      }
    }
  }

  /** The platform's own bars are not ours to measure. */
  private static boolean isOurs(Control control) {
    return control instanceof Label l && l.getData("id") == null || control instanceof Button || control instanceof Link || control instanceof Combo
        || control instanceof Text || control instanceof Passage || control instanceof NatTable || control instanceof Tree;
  }

  /** Titles of views that stand in sight without being whole; sheets are as many as a person opens, so theirs are not looked at. */
  private static List<String> shortened(CTabFolder stack) {
    GC gc = new GC(stack);
    try {
      gc.setFont(stack.getFont());
      return Arrays.stream(stack.getItems()).filter(item -> isView(item) && (!item.isShowing() || item.getBounds().width < wanted(gc, item)))
          .map(CTabItem::getText).toList();
    } finally {
      gc.dispose();
    }
  }

  private static int wanted(GC gc, CTabItem item) {
    return gc.textExtent(item.getText()).x + (item.getImage() == null ? 0 : item.getImage().getBounds().width);
  }

  private static boolean isView(CTabItem item) {
    return Arrays.stream(Window.page().getViewReferences()).anyMatch(v -> v.getPartName().equals(item.getText()));
  }

  private static java.util.Optional<String> cut(Control control) {
    String text = switch (control) {
      case Label label -> label.getText();
      case Button button -> button.getText();
      case Link link -> link.getText();
      case Passage passage -> passage.getText();
      default -> "";
    };
    if (text.isBlank() || control.getSize().x == 0) {
      return java.util.Optional.empty();
    }
    boolean wraps = (control.getStyle() & SWT.WRAP) != 0 || control instanceof Link || control instanceof Passage;
    Point wanted = control.computeSize(wraps ? control.getSize().x : SWT.DEFAULT, SWT.DEFAULT);
    boolean fits = wanted.y <= control.getSize().y + 1 && (wraps || wanted.x <= control.getSize().x + 1);
    return fits ? java.util.Optional.empty() : java.util.Optional.of("“" + text + "” wants " + wanted + " and has " + control.getSize());
  }

  private static boolean isNamed(Control control) {
    boolean needsName = control instanceof Combo || control instanceof Text || control instanceof NatTable || control instanceof Tree || control instanceof Link;
    return !needsName || control.getData("name") instanceof String name && !name.isBlank();
  }
}
