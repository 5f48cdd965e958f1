package daubline.session.merge;

import daubline.model.ModelPackage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Which features of an object are merged, and which of them only together: a number, its unit and the text as typed say one
 * thing, and a mixture of two people's would say what neither wrote.
 */
final class Fields {

  private static final List<Set<String>> TOGETHER = List.of(
      Set.of("kind", "typed", "unit", "value", "low", "high", "sigma", "category", "count", "unitMass", "x1", "y1", "x2", "y2"),
      Set.of("path", "sha256", "bytes", "mediaType"), Set.of("at", "elapsed"), Set.of("picked", "pickedBecause"), Set.of("excluded", "excludedBecause"),
      Set.of("latitude", "longitude"));

  private Fields() {
  }

  /** Features that are merged as one, in the order of the model. */
  record Group(List<EStructuralFeature> features) {
    String name() {
      return features.get(0).getName();
    }
  }

  static List<Group> of(EClass type) {
    Map<Object, List<EStructuralFeature>> groups = new LinkedHashMap<>();
    for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
      if (isMerged(feature)) {
        groups.computeIfAbsent(together(type, feature), g -> new ArrayList<>()).add(feature);
      }
    }
    return groups.values().stream().map(Group::new).toList();
  }

  private static Object together(EClass type, EStructuralFeature feature) {
    boolean reading = ModelPackage.Literals.READING.isSuperTypeOf(type);
    for (Set<String> group : TOGETHER) {
      boolean ofReadings = group.contains("typed");
      if (group.contains(feature.getName()) && ofReadings == (reading && !group.contains("path")) || group.contains(feature.getName()) && !ofReadings) {
        return group;
      }
    }
    return feature;
  }

  private static boolean isMerged(EStructuralFeature feature) {
    boolean contains = feature instanceof EReference r && (r.isContainment() || r.isContainer());
    boolean id = feature instanceof EAttribute a && a.isID();
    return !contains && !id && !feature.isDerived() && !feature.isTransient() && feature.isChangeable() && feature != ModelPackage.Literals.STUDY__FORMAT;
  }

  static List<EReference> containments(EClass type) {
    return type.getEAllContainments();
  }
}
