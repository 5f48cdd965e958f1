package daubline.ui.sheet;

import daubline.model.Choice;
import daubline.model.Claim;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;

/** What goes with the selected value: citation, page, reader and confidence of a claim; basis of a choice; how a value was got. */
final class DetailPane extends Composite {

  private static final String[] CLAIM = {"citation", "page", "verbatim", "confidence", "by", "at", "samplingFraction", "preservationLimit", "limitBecause", "picked",
      "pickedBecause", "how", "note"};
  private static final String[] CHOICE = {"basis", "because", "citation", "page", "by", "note"};
  private static final String[] READING = {"how", "by", "at", "citation", "page", "note"};

  private final OpenStudy study;
  private final StackLayout stack = new StackLayout();
  private final Map<EClass, Fields> forms = new HashMap<>();
  private final Map<EClass, Composite> pages = new HashMap<>();
  private final Composite empty;

  DetailPane(Composite parent, OpenStudy study) {
    super(parent, SWT.NONE);
    this.study = study;
    setLayout(stack);
    setBackground(Hue.ASH.color());
    empty = Pages.plain(this, 1);
    Pages.text(empty, Words.of("detail.none"), Fonts.PLAIN.font(), SWT.DEFAULT).setForeground(Hue.QUIET.color());
    stack.topControl = empty;
  }

  /** Shows what goes with a value; null for none. */
  void show(Reading reading) {
    if (isDisposed()) {
      return;
    }
    if (reading == null) {
      stack.topControl = empty;
    } else {
      Reading kind = kind(reading);
      Fields fields = forms.computeIfAbsent(kind.eClass(), c -> form(kind));
      fields.show(reading);
      stack.topControl = pages.get(kind.eClass());
    }
    layout();
  }

  private static Reading kind(Reading reading) {
    return switch (reading) {
      case Claim claim -> ModelFactory.eINSTANCE.createClaim();
      case Choice choice -> ModelFactory.eINSTANCE.createChoice();
      default -> ModelFactory.eINSTANCE.createReading();
    };
  }

  private Fields form(Reading kind) {
    ScrolledComposite scroll = new ScrolledComposite(this, SWT.V_SCROLL);
    scroll.setShowFocusedControl(true);
    scroll.setExpandHorizontal(true);
    scroll.setExpandVertical(true);
    Composite page = Pages.plain(scroll, 4);
    ((GridLayout) page.getLayout()).horizontalSpacing = 10;
    Fields fields = new Fields(study, page);
    fields.add(kind, kind instanceof Claim ? CLAIM : kind instanceof Choice ? CHOICE : READING);
    scroll.setContent(page);
    scroll.setMinHeight(page.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
    pages.put(kind.eClass(), scroll);
    return fields;
  }
}
