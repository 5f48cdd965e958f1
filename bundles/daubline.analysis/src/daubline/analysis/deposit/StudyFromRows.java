package daubline.analysis.deposit;

import daubline.base.Finding;
import daubline.model.Identified;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Puts a study together again from its rows; what cannot be placed is reported, never dropped unsaid. */
public final class StudyFromRows {

  private final Map<String, EObject> objects = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private StudyFromRows() {
  }

  /**
   * What was read.
   *
   * @param study the study; without what could not be placed
   * @param findings what is wrong, empty when nothing was lost
   */
  public record Result(Study study, List<Finding> findings) {

    public Result {
      findings = List.copyOf(findings);
    }
  }

  /** Reads a study from its tables. */
  public static Result read(List<Rows> tables) {
    StudyFromRows reader = new StudyFromRows();
    tables.forEach(reader::make);
    List<Place> places = new ArrayList<>();
    tables.forEach(table -> reader.fill(table, places));
    places.sort(Comparator.comparingInt(Place::position));
    places.forEach(reader::put);
    List<Study> studies = reader.objects.values().stream().filter(Study.class::isInstance).map(Study.class::cast).toList();
    if (studies.size() != 1) {
      reader.complain("study", "", "the tables hold " + studies.size() + " studies", "a deposit holds exactly one row in the table study");
    }
    return new Result(studies.isEmpty() ? ModelFactory.eINSTANCE.createStudy() : studies.get(0), reader.findings);
  }

  private record Place(EObject object, String table, String container, String role, int position) {
  }

  private static EClass type(String table) {
    return ModelPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
        .filter(c -> !c.isAbstract() && StudyRows.name(c).equals(table)).findFirst().orElse(null);
  }

  private void make(Rows table) {
    EClass type = type(table.name());
    if (type == null) {
      complain(table.name(), "", "no table of a study has this name", "leave it out or import its values by hand");
      return;
    }
    int id = table.column(Rows.ID).orElseThrow();
    for (List<String> row : table.rows()) {
      EObject object = EcoreUtil.create(type);
      ((Identified) object).setId(row.get(id));
      if (objects.put(row.get(id), object) != null) {
        complain(table.name(), row.get(id), "the id stands twice", "give each row an id of its own");
      }
    }
  }

  private void fill(Rows table, List<Place> places) {
    EClass type = type(table.name());
    if (type == null) {
      return;
    }
    for (List<String> row : table.rows()) {
      EObject object = objects.get(cell(table, row, Rows.ID));
      for (EStructuralFeature feature : StudyRows.features(type)) {
        set(table.name(), object, feature, cell(table, row, StudyRows.column(feature)));
      }
      if (!(object instanceof Study)) {
        places.add(new Place(object, table.name(), cell(table, row, Rows.CONTAINER), cell(table, row, Rows.ROLE), whole(cell(table, row, Rows.POSITION))));
      }
    }
  }

  private static String cell(Rows table, List<String> row, String field) {
    return table.column(field).map(row::get).orElse("");
  }

  private static int whole(String text) {
    return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : 0;
  }

  private void set(String table, EObject object, EStructuralFeature feature, String text) {
    if (text.isEmpty()) {
      return;
    }
    if (feature instanceof EReference reference) {
      refer(table, object, reference, text);
      return;
    }
    try {
      object.eSet(feature, value((EAttribute) feature, text));
    } catch (IllegalArgumentException e) {
      complain(table, ((Identified) object).getId(), "“" + text + "” is no value of " + feature.getName(), "see the codebook for what it may hold");
    }
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Object value(EAttribute attribute, String text) {
    Class<?> type = attribute.getEAttributeType().getInstanceClass();
    return type.isEnum() ? Enum.valueOf((Class<Enum>) type, text) : EcoreUtil.createFromString(attribute.getEAttributeType(), text);
  }

  @SuppressWarnings("unchecked")
  private void refer(String table, EObject object, EReference reference, String ids) {
    for (String id : ids.split(Rows.SEPARATOR)) {
      EObject target = objects.get(id);
      if (!reference.getEReferenceType().isInstance(target)) {
        complain(table, ((Identified) object).getId(), reference.getName() + " leads to “" + id + "”, which is not there", "add the row or clear the cell");
      } else if (reference.isMany()) {
        ((List<EObject>) object.eGet(reference)).add(target);
      } else {
        object.eSet(reference, target);
      }
    }
  }

  @SuppressWarnings("unchecked")
  private void put(Place place) {
    EObject container = objects.get(place.container());
    EStructuralFeature role = container == null ? null : container.eClass().getEStructuralFeature(place.role());
    if (!(role instanceof EReference reference) || !reference.isContainment() || !reference.getEReferenceType().isInstance(place.object())) {
      complain(place.table(), ((Identified) place.object()).getId(), "it has no place: “" + place.container() + "” has no " + place.role() + " for it",
          "correct held_by and held_as");
    } else if (reference.isMany()) {
      ((List<EObject>) container.eGet(reference)).add(place.object());
    } else {
      container.eSet(reference, place.object());
    }
  }

  private void complain(String table, String id, String what, String remedy) {
    findings.add(Finding.error("deposit.row", "data/" + table + ".csv" + (id.isEmpty() ? "" : ", id " + id), what, remedy));
  }
}
