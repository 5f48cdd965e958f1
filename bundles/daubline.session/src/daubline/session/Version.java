package daubline.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/**
 * What stood in a field before a change of this session.
 *
 * @param field name of the attribute in the model
 * @param before what stood there; empty when nothing did
 * @param after what was put there; empty when it was taken away
 * @param change the name of the change
 * @param at when it was made
 */
public record Version(String field, String before, String after, String change, Instant at) {

  /** The versions of an object's own fields that these changes left behind, the oldest first. */
  static List<Version> of(EObject object, List<Change> changes) {
    List<Version> all = new ArrayList<>();
    for (Change change : changes) {
      for (Step step : change.steps()) {
        if (step.object() == object && step instanceof Step.Put put && put.feature() instanceof EAttribute && put.before() != null && !put.before().equals(put.after())) {
          all.add(new Version(put.feature().getName(), text(put.before()), text(put.after()), change.getLabel(), change.at()));
        }
      }
    }
    return List.copyOf(all);
  }

  private static String text(Object value) {
    return value == null ? "" : value.toString();
  }
}
