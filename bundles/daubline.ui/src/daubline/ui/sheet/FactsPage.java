package daubline.ui.sheet;

import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** The plain facts of an object: name, dates, people, what it refers to. */
final class FactsPage implements Page {

  private static final int NARROW = 620;

  private final ScrolledComposite scroll;
  private final Fields fields;
  private final EObject object;

  FactsPage(Composite parent, OpenStudy study, EObject object) {
    this.object = object;
    scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
    scroll.setShowFocusedControl(true);
    scroll.setBackground(Hue.ASH.color());
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    Composite form = Pages.plain(scroll, 2);
    ((org.eclipse.swt.layout.GridLayout) form.getLayout()).marginWidth = 14;
    ((org.eclipse.swt.layout.GridLayout) form.getLayout()).marginHeight = 12;
    fields = new Fields(study, form);
    fields.add(object, Facts.of(object));
    scroll.setContent(form);
    scroll.setMinSize(form.computeSize(NARROW, SWT.DEFAULT));
    scroll.setMinWidth(0);
  }

  @Override
  public Control control() {
    return scroll;
  }

  @Override
  public void refresh() {
    fields.show(object);
  }

  @Override
  public void focus() {
    scroll.setFocus();
  }
}
