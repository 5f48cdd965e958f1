package daubline.ui.sheet;

import daubline.base.AmountReader;
import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/** A length that the study keeps in metres, typed and shown with its unit: the one preferred, otherwise millimetres. */
final class LengthField implements Field {

  private final Text text;
  private final OpenStudy study;
  private final EAttribute attribute;
  private EObject object;
  private String before = "";

  LengthField(Composite parent, OpenStudy study, EAttribute attribute) {
    this.study = study;
    this.attribute = attribute;
    text = new Text(parent, SWT.BORDER | SWT.SINGLE);
    text.addListener(SWT.FocusOut, e -> commit());
    text.addListener(SWT.DefaultSelection, e -> commit());
    text.addListener(SWT.Modify, e -> text.setData(Pending.REVERT, text.getText().equals(before) ? null : (Runnable) () -> text.setText(before)));
  }

  private static Unit unit() {
    return Preferred.unit(Quantity.LENGTH).orElseGet(() -> Units.find(Quantity.LENGTH, "mm").orElseThrow());
  }

  @Override
  public Control control() {
    return text;
  }

  @Override
  public void show(EObject subject) {
    Double metres = subject == null ? null : (Double) subject.eGet(attribute);
    String now = metres == null ? "" : Printed.number(unit().fromCanonical(metres)).replace('.', Preferred.decimal().sign()) + " " + unit().symbol();
    if (subject == object && now.equals(before) && !text.getText().equals(before)) {
      return;
    }
    object = subject;
    before = now;
    text.setEnabled(subject != null);
    text.setEditable(!study.session().isReadOnly());
    text.setText(now);
    text.setForeground(Hue.INK.color());
  }

  private void commit() {
    if (object == null || text.getText().equals(before)) {
      return;
    }
    EnteredText parts = EnteredText.split(text.getText(), Quantity.LENGTH);
    Unit typedIn = parts.unit().isEmpty() ? unit() : Units.find(Quantity.LENGTH, parts.unit()).orElse(unit());
    boolean empty = text.getText().isBlank();
    Typed typed = new AmountReader(Preferred.decimal()).number(empty ? "0" : parts.value(), typedIn);
    Optional<Finding> complaint = !typed.isRead() ? Optional.of(typed.finding())
        : typed.amount().kind() == ValueKind.EXACT && typed.amount().value() >= 0 ? Optional.empty()
        : Optional.of(Finding.error("length.plain", "", "“" + text.getText() + "” is no plain height", "write one number with its unit, such as 21 cm"));
    if (complaint.isPresent()) {
      text.setForeground(Hue.LINING.color());
      text.setToolTipText(Words.said(complaint.get()));
      return;
    }
    EObject subject = object;
    study.edit("change.field", Fields.label(attribute), () -> subject.eSet(attribute, empty ? null : typed.amount().value()));
    show(subject);
  }
}
