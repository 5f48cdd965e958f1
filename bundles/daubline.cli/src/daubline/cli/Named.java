package daubline.cli;

import daubline.model.Identified;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;

/** Finds an object of a study by what somebody typed. */
final class Named {

  private Named() {
  }

  /**
   * The one object with a name or an id; with an empty name the only one of its kind.
   *
   * @param kind what it is, for the message
   * @throws IllegalArgumentException when none or several fit; the message names those that are there
   */
  static <T extends daubline.model.Named> T only(StudySession session, Class<T> type, String name, String kind) {
    List<T> all = new ArrayList<>();
    for (Iterator<EObject> things = session.study().eAllContents(); things.hasNext();) {
      EObject thing = things.next();
      if (type.isInstance(thing)) {
        all.add(type.cast(thing));
      }
    }
    List<T> fit = all.stream().filter(t -> name.isEmpty() || name.equals(((Identified) t).getId()) || name.equalsIgnoreCase(t.getName())).toList();
    if (fit.size() == 1) {
      return fit.get(0);
    }
    String there = all.stream().map(daubline.model.Named::getName).map(String::valueOf).sorted().limit(30).collect(Collectors.joining(", "));
    throw new IllegalArgumentException((fit.isEmpty() ? "there is no " + kind + " “" + name + "”" : fit.size() + " of kind " + kind + " fit “" + name + "”; use the id")
        + (there.isEmpty() ? "" : "; there are: " + there));
  }
}
