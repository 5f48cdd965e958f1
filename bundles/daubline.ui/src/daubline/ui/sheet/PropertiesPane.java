package daubline.ui.sheet;

import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The plain facts of one or several things of one kind as fields, for a view beside the sheets. */
public final class PropertiesPane {

  private static final int NARROW = 260;
  /** What tells things apart and so is not given to several at once. */
  private static final Set<String> OWN = Set.of("name", "number");

  private final ScrolledComposite scroll;
  private final Fields fields;
  private final Composite form;

  /** The fields for things of the kind of some examples, all of the same class. */
  public PropertiesPane(Composite parent, OpenStudy study, List<? extends EObject> objects) {
    scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
    scroll.setShowFocusedControl(true);
    scroll.setBackground(Hue.ASH.color());
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    form = Pages.plain(scroll, 2);
    fields = new Fields(study, form);
    EObject example = objects.get(0);
    fields.add(example, Arrays.stream(Facts.of(example)).filter(f -> objects.size() == 1 || !OWN.contains(f)).toArray(String[]::new));
    scroll.setContent(form);
    scroll.addListener(SWT.Resize, e -> scroll.setMinHeight(form.computeSize(Math.max(NARROW, scroll.getClientArea().width), SWT.DEFAULT).y));
    show(objects);
  }

  /** Whether a thing has fields at all. */
  public static boolean has(EObject object) {
    return Facts.isOwner(object);
  }

  /** Shows what the things say now. */
  public void show(List<? extends EObject> objects) {
    fields.showAll(objects);
  }

  /** The widget. */
  public Control control() {
    return scroll;
  }

  /** Gives the keyboard to the first field. */
  public void focus() {
    if (form.getChildren().length > 1) {
      form.getChildren()[1].setFocus();
    }
  }
}
