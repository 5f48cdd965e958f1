package daubline.session;

import daubline.model.Identified;
import java.util.Iterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Refuses text that no XML file can hold, before it gets into the study. */
final class Texts {

  private Texts() {
  }

  /**
   * Looks at a text, or at an object with all it contains.
   *
   * @throws IllegalArgumentException when a text holds a character that cannot be stored
   */
  static void refuseUnstorable(Object arrival) {
    if (arrival instanceof String text) {
      check(text, "The text");
    } else if (arrival instanceof EObject root && root.eContainer() != null) {
      checkAttributes(root);
      for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
        checkAttributes(all.next());
      }
    }
  }

  private static void checkAttributes(EObject object) {
    for (EAttribute attribute : object.eClass().getEAllAttributes()) {
      if (object.eGet(attribute) instanceof String text) {
        String id = object instanceof Identified identified ? " " + identified.getId() : "";
        check(text, "The " + attribute.getName() + " of " + object.eClass().getName() + id);
      }
    }
  }

  private static void check(String text, String what) {
    text.codePoints().filter(c -> !isStorable(c)).findFirst().ifPresent(c -> {
      throw new IllegalArgumentException(String.format("%s holds a character that cannot be stored (U+%04X); remove it", what, c));
    });
  }

  /** The characters of XML 1.0, 5th edition, production 2. */
  private static boolean isStorable(int c) {
    return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
  }
}
