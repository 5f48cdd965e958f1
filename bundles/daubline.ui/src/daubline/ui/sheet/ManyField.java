package daubline.ui.sheet;

import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Several things out of all that the study has, a line each, set and cleared by a click or the space bar. */
final class ManyField implements Field {

  private static final int ROWS = 4;

  private final Table table;
  private final OpenStudy study;
  private final EReference feature;
  private final Supplier<List<Object>> candidates;
  private List<Object> offered = List.of();
  private EObject object;

  ManyField(Composite parent, OpenStudy study, EReference feature, Supplier<List<Object>> candidates) {
    this.study = study;
    this.feature = feature;
    this.candidates = candidates;
    table = new Table(parent, SWT.CHECK | SWT.BORDER | SWT.V_SCROLL);
    table.addListener(SWT.Selection, e -> {
      if (e.detail == SWT.CHECK) {
        commit((TableItem) e.item);
      }
    });
  }

  @Override
  public Control control() {
    return table;
  }

  /** As high as a few lines; a longer list scrolls. */
  int height() {
    return ROWS * table.getItemHeight();
  }

  @Override
  public void show(EObject subject) {
    object = subject;
    table.setEnabled(subject != null && !study.session().isReadOnly());
    offered = candidates.get();
    table.setItemCount(offered.size());
    for (int i = 0; i < offered.size(); i++) {
      TableItem item = table.getItem(i);
      String name = Fields.print(offered.get(i));
      if (!name.equals(item.getText())) {
        item.setText(name);
      }
      item.setChecked(subject != null && held().contains(offered.get(i)));
    }
  }

  @SuppressWarnings("unchecked")
  private List<Object> held() {
    return (List<Object>) object.eGet(feature);
  }

  private void commit(TableItem item) {
    Object thing = offered.get(table.indexOf(item));
    if (item.getChecked() != held().contains(thing)) {
      Fields.edit(study, feature, List.of(object), () -> {
        if (!held().remove(thing)) {
          held().add(thing);
        }
      });
    }
  }
}
