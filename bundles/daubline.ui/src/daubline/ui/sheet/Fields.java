package daubline.ui.sheet;

import daubline.analysis.EntryOrigins;
import daubline.base.Quantity;
import daubline.base.ValueType;
import daubline.model.Identified;
import daubline.model.ModelPackage.Literals;
import daubline.ui.Words;
import daubline.ui.explain.Explanations;
import daubline.ui.explain.WhatIsThis;
import daubline.ui.explain.WhereFrom;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/**
 * Labelled fields for the plain features of objects: text, numbers, dates, choices and references. Each change is one
 * named change of the study.
 */
final class Fields {

  private final OpenStudy study;
  private final Composite parent;
  private final List<Field> fields = new ArrayList<>();
  private EObject shown;

  Fields(OpenStudy study, Composite parent) {
    this.study = study;
    this.parent = parent;
  }

  /** Adds a field for each named feature that the object has. */
  void add(EObject example, String... features) {
    for (String name : features) {
      EStructuralFeature feature = example.eClass().getEStructuralFeature(name);
      if (feature != null) {
        add(example, feature);
      }
    }
  }

  private void add(EObject example, EStructuralFeature feature) {
    Label label = new Label(parent, SWT.NONE);
    label.setText(label(feature));
    label.setBackground(Hue.ASH.color());
    label.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false));
    Field field = create(example, feature);
    field.control().setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    ((GridData) field.control().getLayoutData()).widthHint = 160;
    if (field instanceof ManyField many) {
      ((GridData) many.control().getLayoutData()).heightHint = many.height();
    }
    Pages.named(field.control(), label(feature), Words.orElse("tip." + feature.getName(), ""));
    field.control().setData("id", feature.getName());
    WhatIsThis.on(field.control(), () -> List.of(Explanations.field(example.eClass().getName(), feature.getName(), label(feature))));
    WhereFrom.byKey(field.control(), () -> Optional.ofNullable(shown).map(o -> new EntryOrigins(study.session()).of(o, label(feature), said(o, feature))));
    fields.add(field);
  }

  private Field create(EObject example, EStructuralFeature feature) {
    if (feature instanceof EReference reference) {
      return reference.isMany() ? new ManyField(parent, study, reference, () -> candidates(reference))
          : new ChoiceField(parent, study, feature, () -> candidates(reference));
    }
    EAttribute attribute = (EAttribute) feature;
    Class<?> type = attribute.getEAttributeType().getInstanceClass();
    if (type != null && type.isEnum()) {
      ChoiceField choice = new ChoiceField(parent, study, feature, () -> List.of(type.getEnumConstants()));
      return attribute == Literals.TRIAL__STATUS ? choice.guarded(new ReadyQuestion(study)) : choice;
    }
    if (type == boolean.class) {
      return new ChoiceField(parent, study, feature, () -> List.of(Boolean.FALSE, Boolean.TRUE));
    }
    if (attribute == Literals.CLAIM__PRESERVATION_LIMIT) {
      return new LengthField(parent, study, attribute);
    }
    if (attribute.getEAttributeType() instanceof EEnum) {
      throw new IllegalArgumentException("The model uses the enumerations of base, not " + attribute);
    }
    List<String> words = words(attribute);
    return words.isEmpty() ? new TextField(parent, study, attribute) : new ChoiceField(parent, study, feature, () -> words);
  }

  /** The words that the model keeps as text but of which only some have a meaning; empty when any text has. */
  private static List<String> words(EAttribute attribute) {
    Stream<? extends Enum<?>> known = attribute == Literals.VARIABLE_DEFINITION__TYPE ? Arrays.stream(ValueType.values())
        : attribute == Literals.VARIABLE_DEFINITION__QUANTITY ? Arrays.stream(Quantity.values()) : Stream.empty();
    return known.map(e -> e.name().toLowerCase(Locale.ROOT)).toList();
  }

  /** Everything of the study that a reference can point to. */
  private List<Object> candidates(EReference reference) {
    List<Object> found = new ArrayList<>();
    for (Iterator<EObject> all = study.session().study().eAllContents(); all.hasNext();) {
      EObject object = all.next();
      if (reference.getEReferenceType().isInstance(object)) {
        found.add(object);
      }
    }
    return found;
  }

  /** The label of a feature: one for its class when there is one, otherwise the common one. */
  static String label(EStructuralFeature feature) {
    return Words.orElse("feature." + feature.getEContainingClass().getName() + "." + feature.getName(), Words.orElse("feature." + feature.getName(), feature.getName()));
  }

  /** Shows the values of an object in the fields; null clears and disables them. */
  void show(EObject object) {
    shown = object;
    fields.forEach(f -> f.show(object));
  }

  private static String said(EObject object, EStructuralFeature feature) {
    Object value = object.eClass().getEAllStructuralFeatures().contains(feature) ? object.eGet(feature) : null;
    return value instanceof Number n ? n.toString() : print(value);
  }

  /** Shows what several things of one kind share. */
  void showAll(List<? extends EObject> objects) {
    fields.forEach(f -> f.showAll(objects));
  }

  /** Changes a feature of one or several things as one change. */
  static void edit(OpenStudy study, EStructuralFeature feature, List<? extends EObject> objects, Runnable steps) {
    if (objects.size() > 1) {
      study.session().edit(Words.of("change.fields", label(feature), objects.size()), steps);
    } else {
      study.edit("change.field", label(feature), steps);
    }
  }

  /** How an object or a word stands in a choice. */
  static String print(Object choice) {
    return switch (choice) {
      case Boolean yes -> Words.of(yes ? "yes" : "no");
      case Enum<?> word -> Words.of(word);
      case Identified object -> OpenStudy.nameOf(object);
      case String word -> Words.orElse("word." + word, word.replace('_', ' '));
      case null, default -> "";
    };
  }
}
