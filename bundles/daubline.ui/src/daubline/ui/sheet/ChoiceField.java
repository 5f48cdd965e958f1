package daubline.ui.sheet;

import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import daubline.session.Readings;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** A choice among words or objects; the first line clears it. */
final class ChoiceField implements Field {

  private final Combo combo;
  private final OpenStudy study;
  private final EStructuralFeature feature;
  private final Supplier<? extends List<?>> candidates;
  private final List<Object> shown = new ArrayList<>();
  private Guard guard = (subject, chosen) -> Optional.of(List.of());
  private List<? extends EObject> objects = List.of();

  /** Asked before a choice is kept. */
  interface Guard {
    /** What must be changed along with it; empty when the choice is not to be kept. */
    Optional<List<Runnable>> along(EObject subject, Object chosen);
  }

  ChoiceField(Composite parent, OpenStudy study, EStructuralFeature feature, Supplier<? extends List<?>> candidates) {
    this.study = study;
    this.feature = feature;
    this.candidates = candidates;
    combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
    combo.addListener(SWT.Selection, e -> commit());
  }

  /** The same with somebody to ask first. */
  ChoiceField guarded(Guard asked) {
    guard = asked;
    return this;
  }

  @Override
  public Control control() {
    return combo;
  }

  @Override
  public void show(EObject subject) {
    showAll(subject == null ? List.of() : List.of(subject));
  }

  @Override
  public void showAll(List<? extends EObject> subjects) {
    objects = List.copyOf(subjects);
    combo.setEnabled(!subjects.isEmpty() && !study.session().isReadOnly());
    List<Object> now = new ArrayList<>();
    boolean optional = !(feature.getEType().getInstanceClass() == boolean.class);
    if (optional) {
      now.add(null);
    }
    candidates.get().stream().filter(c -> !subjects.contains(c)).forEach(now::add);
    if (!now.equals(shown) || combo.getItemCount() != now.size()) {
      shown.clear();
      shown.addAll(now);
    }
    List<Object> held = new ArrayList<>();
    subjects.stream().map(s -> s.eGet(feature)).filter(v -> !held.contains(v)).forEach(held::add);
    Pages.offer(combo, shown.stream().map(Fields::print), held.size() == 1 ? shown.indexOf(held.get(0)) : -1);
  }

  private void commit() {
    Object chosen = combo.getSelectionIndex() < 0 ? null : shown.get(combo.getSelectionIndex());
    List<? extends EObject> changed = objects.stream().filter(o -> !Objects.equals(o.eGet(feature), chosen)).toList();
    if (combo.getSelectionIndex() < 0 || changed.isEmpty()) {
      return;
    }
    List<Runnable> along = new ArrayList<>();
    for (EObject object : changed) {
      Optional<List<Runnable>> more = guard.along(object, chosen);
      if (more.isEmpty()) {
        showAll(objects);
        return;
      }
      along.addAll(more.get());
    }
    Fields.edit(study, feature, changed, () -> {
      along.forEach(Runnable::run);
      changed.forEach(o -> put(o, chosen));
    });
  }

  private void put(EObject object, Object chosen) {
    if (feature == Literals.READING__PICKED) {
      Readings.pick((Reading) object, Boolean.TRUE.equals(chosen));
    } else {
      object.eSet(feature, chosen);
    }
  }
}
