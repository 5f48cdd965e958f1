package daubline.seeds;

import daubline.model.Component;
import daubline.model.Identified;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Gives what has no id yet one made of its owner's id, the feature and its place: the same in each run. */
final class SeedIds {

  private SeedIds() {
  }

  /** Completes the ids below an object that has one. */
  static void complete(EObject owner) {
    for (EReference feature : owner.eClass().getEAllContainments()) {
      if (feature.isMany()) {
        List<?> parts = (List<?>) owner.eGet(feature);
        for (int i = 0; i < parts.size(); i++) {
          give(owner, feature, (EObject) parts.get(i), "-" + (i + 1));
        }
      } else if (owner.eGet(feature) instanceof EObject part) {
        give(owner, feature, part, "");
      }
    }
  }

  private static void give(EObject owner, EReference feature, EObject part, String place) {
    Identified identified = (Identified) part;
    if (identified.getId() == null) {
      identified.setId(((Identified) owner).getId() + "-" + tail(feature, identified, place));
    }
    complete(part);
  }

  private static String tail(EReference feature, Identified part, String place) {
    if (part instanceof Component component) {
      return component.getSymbol().replaceAll("[^A-Za-z0-9]", "");
    }
    return singular(feature.getName().toLowerCase(Locale.ROOT), feature.isMany()) + place;
  }

  private static String singular(String name, boolean many) {
    if (name.endsWith("analyses")) {
      return "analysis";
    }
    return many && name.endsWith("s") && !name.equals("series") ? name.substring(0, name.length() - 1) : name;
  }
}
