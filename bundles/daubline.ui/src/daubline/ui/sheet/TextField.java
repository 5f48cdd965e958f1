package daubline.ui.sheet;

import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;
import daubline.ui.look.Hue;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

/** A line of text or a number; Enter and leaving the field commit, Esc takes back. A number that cannot be read stays to be mended. */
final class TextField implements Field {

  private final Text text;
  private final OpenStudy study;
  private final EAttribute attribute;
  private final Class<?> type;
  private List<? extends EObject> objects = List.of();
  private String before = "";

  TextField(Composite parent, OpenStudy study, EAttribute attribute) {
    this.study = study;
    this.attribute = attribute;
    this.type = attribute.getEAttributeType().getInstanceClass();
    text = new Text(parent, SWT.BORDER | SWT.SINGLE);
    text.addListener(SWT.FocusOut, e -> commit());
    text.addListener(SWT.DefaultSelection, e -> commit());
    text.addListener(SWT.Modify, e -> markPending());
    text.addListener(SWT.KeyDown, e -> {
      if (e.keyCode == SWT.ESC) {
        revert();
      }
    });
  }

  @Override
  public Control control() {
    return text;
  }

  @Override
  public void show(EObject subject) {
    showAll(subject == null ? List.of() : List.of(subject));
  }

  @Override
  public void showAll(List<? extends EObject> subjects) {
    List<String> said = subjects.stream().map(s -> isDate() ? Preferred.dates().show(print(s.eGet(attribute))) : print(s.eGet(attribute))).distinct().toList();
    String now = said.size() == 1 ? said.get(0) : "";
    boolean stillTyping = subjects.equals(objects) && now.equals(before) && !text.getText().equals(before);
    if (stillTyping) {
      return;
    }
    objects = List.copyOf(subjects);
    text.setEnabled(!subjects.isEmpty());
    text.setEditable(!study.session().isReadOnly());
    before = now;
    if (!text.getText().equals(before)) {
      text.setText(before);
    }
    unmark();
  }

  /** Days are named after what happened on them. */
  private boolean isDate() {
    return type == String.class && attribute.getName().matches("on|at|[a-z]+On");
  }

  private static String print(Object value) {
    return switch (value) {
      case null -> "";
      case Double number -> Preferred.number(number);
      default -> value.toString();
    };
  }

  private void markPending() {
    boolean changed = !text.getText().equals(before);
    text.setData(Pending.REVERT, changed ? (Runnable) this::revert : null);
  }

  private void revert() {
    text.setText(before);
    unmark();
  }

  private void unmark() {
    text.setData(Pending.REVERT, null);
    text.setForeground(Hue.INK.color());
    text.setToolTipText(null);
  }

  private void commit() {
    if (objects.isEmpty() || text.getText().equals(before)) {
      return;
    }
    String typed = isDate() ? Preferred.dates().keep(text.getText().strip()) : text.getText().strip();
    Optional<Finding> complaint = complaint(typed);
    if (complaint.isPresent()) {
      text.setForeground(Hue.LINING.color());
      text.setToolTipText(Words.said(complaint.get()));
      return;
    }
    List<? extends EObject> subjects = objects;
    Object value = typed.isEmpty() ? null : value(typed);
    Fields.edit(study, attribute, subjects, () -> subjects.forEach(s -> s.eSet(attribute, value)));
    showAll(subjects);
  }

  private Optional<Finding> complaint(String typed) {
    boolean number = type == Double.class || type == Integer.class || type == Long.class || type == int.class;
    if (!number || typed.isEmpty()) {
      return Optional.empty();
    }
    Optional<Double> read = Numbers.parse(typed, Preferred.decimal());
    boolean whole = type == Double.class || read.map(d -> d == Math.rint(d)).orElse(false);
    return read.isPresent() && whole ? Optional.empty() : Optional.of(Numbers.complaint(typed, Preferred.decimal()));
  }

  private Object value(String typed) {
    if (type == Double.class) {
      return Numbers.parse(typed, Preferred.decimal()).orElseThrow();
    }
    if (type == Integer.class || type == int.class) {
      return Numbers.parse(typed, Preferred.decimal()).orElseThrow().intValue();
    }
    return type == Long.class ? (Object) Numbers.parse(typed, Preferred.decimal()).orElseThrow().longValue() : typed;
  }
}
