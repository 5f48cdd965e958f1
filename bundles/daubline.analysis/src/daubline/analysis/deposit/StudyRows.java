package daubline.analysis.deposit;

import daubline.analysis.deposit.Rows.Field;
import daubline.analysis.deposit.Rows.Type;
import daubline.model.Identified;
import daubline.model.ModelPackage;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Takes a study apart into one table for each class of the model. It follows the model as it stands, so that a new
 * structure is archived without another line here.
 */
public final class StudyRows {

  private final Map<EObject, String> ids = new LinkedHashMap<>();
  private final Map<EClass, List<EObject>> objects = new LinkedHashMap<>();

  private StudyRows(Study study) {
    take(study, "study");
  }

  /** The tables of a study in alphabetical order; a class without objects has none. */
  public static List<Rows> of(Study study) {
    StudyRows rows = new StudyRows(study);
    Map<String, Rows> tables = new TreeMap<>();
    rows.objects.keySet().forEach(type -> tables.put(name(type), rows.table(type)));
    return List.copyOf(tables.values());
  }

  /** The tables of the model without rows: what a deposit of this version may hold. */
  public static List<Rows> forms() {
    return ModelPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast).filter(c -> !c.isAbstract())
        .map(type -> new Rows(name(type), fields(type, ""), List.of())).toList();
  }

  /** An object that was never saved has no id; its place names it. */
  private void take(EObject object, String place) {
    String id = object instanceof Identified identified && identified.getId() != null && !identified.getId().isBlank() ? identified.getId() : place;
    ids.put(object, id);
    objects.computeIfAbsent(object.eClass(), c -> new ArrayList<>()).add(object);
    for (Iterator<EObject> parts = object.eContents().iterator(); parts.hasNext();) {
      EObject part = parts.next();
      take(part, id + "-" + part.eContainingFeature().getName() + "-" + position(part));
    }
  }

  private static int position(EObject object) {
    EReference role = object.eContainmentFeature();
    return role == null || !role.isMany() ? 0 : ((List<?>) object.eContainer().eGet(role)).indexOf(object);
  }

  private Rows table(EClass type) {
    List<EStructuralFeature> features = features(type);
    return new Rows(name(type), fields(type, holder(type)), objects.get(type).stream().map(object -> row(object, features)).toList());
  }

  private static List<Field> fields(EClass type, String holder) {
    List<Field> fields = new ArrayList<>(List.of(field(Rows.ID, Type.STRING), new Field(Rows.CONTAINER, Type.REFERENCE, List.of(), holder),
        field(Rows.ROLE, Type.STRING), field(Rows.POSITION, Type.INTEGER)));
    features(type).forEach(feature -> fields.add(field(feature)));
    return fields;
  }

  /** The one class that holds all objects of this one; empty when there are several or none. */
  private String holder(EClass type) {
    List<String> holders = objects.get(type).stream().map(EObject::eContainer).map(c -> c == null ? "" : name(c.eClass())).distinct().toList();
    return holders.size() == 1 ? holders.get(0) : "";
  }

  /** Everything but the id and what is contained, which stands in tables of its own. */
  static List<EStructuralFeature> features(EClass type) {
    return type.getEAllStructuralFeatures().stream()
        .filter(f -> !f.equals(ModelPackage.Literals.IDENTIFIED__ID) && !(f instanceof EReference r && (r.isContainment() || r.isContainer()))).toList();
  }

  private static Field field(String name, Type type) {
    return new Field(name, type, List.of(), "");
  }

  private static Field field(EStructuralFeature feature) {
    if (feature instanceof EReference reference) {
      String target = reference.isMany() || reference.getEReferenceType().isAbstract() ? "" : name(reference.getEReferenceType());
      return new Field(column(feature), reference.isMany() ? Type.REFERENCES : Type.REFERENCE, List.of(), target);
    }
    Class<?> type = ((EAttribute) feature).getEAttributeType().getInstanceClass();
    List<String> words = type.isEnum() ? Arrays.stream(type.getEnumConstants()).map(e -> ((Enum<?>) e).name()).toList() : List.of();
    return new Field(column(feature), type(type), words, "");
  }

  private static Type type(Class<?> type) {
    if (type.isEnum()) {
      return Type.WORD;
    }
    if (type == boolean.class || type == Boolean.class) {
      return Type.BOOLEAN;
    }
    return type == Double.class || type == double.class ? Type.NUMBER : type == String.class ? Type.STRING : Type.INTEGER;
  }

  private List<String> row(EObject object, List<EStructuralFeature> features) {
    List<String> row = new ArrayList<>(List.of(ids.get(object), ids.getOrDefault(object.eContainer(), ""),
        object.eContainmentFeature() == null ? "" : object.eContainmentFeature().getName(), Integer.toString(position(object))));
    for (EStructuralFeature feature : features) {
      row.add(text(feature, object.eGet(feature)));
    }
    return row;
  }

  private String text(EStructuralFeature feature, Object value) {
    if (value == null) {
      return "";
    }
    if (feature instanceof EReference) {
      List<?> targets = value instanceof List<?> list ? list : List.of(value);
      return targets.stream().map(t -> ids.getOrDefault(t, "")).filter(id -> !id.isEmpty()).collect(Collectors.joining(Rows.SEPARATOR));
    }
    return value instanceof Enum<?> word ? word.name() : EcoreUtil.convertToString(((EAttribute) feature).getEAttributeType(), value);
  }

  /** The name of a class as the name of a table. */
  static String name(EClass type) {
    return type.getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
  }

  /** The name of a feature as the name of a column. */
  static String column(EStructuralFeature feature) {
    return feature.getName().replaceAll("(?<=[a-z])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
  }
}
