package daubline.session;

import daubline.model.Identified;
import java.security.SecureRandom;
import java.util.Iterator;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;

/** Gives new objects an id that two people working apart will not both choose. */
final class Ids {

  private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
  private static final int LENGTH = 8;
  private static final SecureRandom RANDOM = new SecureRandom();

  private Ids() {
  }

  /** Gives an id to each object under the root that has none. */
  static void complete(EObject root) {
    giveTo(root);
    for (Iterator<EObject> all = root.eAllContents(); all.hasNext();) {
      giveTo(all.next());
    }
  }

  private static void giveTo(EObject object) {
    if (object instanceof Identified identified && (identified.getId() == null || identified.getId().isBlank())) {
      identified.setId(fresh(object.eClass().getName()));
    }
  }

  private static String fresh(String kind) {
    StringBuilder id = new StringBuilder(kind.toLowerCase(Locale.ROOT)).append('-');
    for (int i = 0; i < LENGTH; i++) {
      id.append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
    }
    return id.toString();
  }
}
