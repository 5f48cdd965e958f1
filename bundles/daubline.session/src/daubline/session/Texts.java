package daubline.session;

import daubline.model.Identified;
import java.util.Iterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Refuses text that no XML file can hold, before it gets into the study. */
final class Texts {

  private Texts() {
  }

  static void refuseUnstorable(EObject root) {
    check(root);
    for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
      check(all.next());
    }
  }

  private static void check(EObject object) {
    for (EAttribute attribute : object.eClass().getEAllAttributes()) {
      if (object.eGet(attribute) instanceof String text) {
        text.codePoints().filter(c -> !isStorable(c)).findFirst().ifPresent(c -> {
          String id = object instanceof Identified identified ? " " + identified.getId() : "";
          throw new IllegalArgumentException(String.format("The %s of %s%s holds a character that cannot be stored (U+%04X); remove it",
              attribute.getName(), object.eClass().getName(), id, c));
        });
      }
    }
  }

  /** The characters of XML 1.0, 5th edition, production 2. */
  private static boolean isStorable(int c) {
    return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
  }
}
