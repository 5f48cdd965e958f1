package daubline.ui.plan;

import daubline.base.Variable;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;

/**
 * One row of what a series is planned with.
 *
 * @param group the heading of a group; the other parts are empty then
 * @param name what it is
 * @param text what stands in the second column
 * @param put takes what was typed there; null when nothing may be typed
 * @param choices the words offered there
 * @param more what stands in the third column
 * @param putMore takes what was typed there; null when nothing may be typed
 * @param moreChoices the words offered there
 * @param tip what is to be known about it
 * @param variable the variable that it is about; null when it is about none
 * @param entry the object of the study that holds it; null when it is held nowhere yet
 */
record PlanRow(String group, String name, String text, Consumer<String> put, List<String> choices, String more, Consumer<String> putMore,
    List<String> moreChoices, String tip, Variable variable, EObject entry) {

  static PlanRow heading(String group) {
    return new PlanRow(group, "", "", null, List.of(), "", null, List.of(), "", null, null);
  }

  static PlanRow of(String name, String text, String tip, Consumer<String> put, List<String> choices) {
    return new PlanRow("", name, text, put, choices, "", null, List.of(), tip, null, null);
  }

  PlanRow and(String other, Consumer<String> take, List<String> words) {
    return new PlanRow(group, name, text, put, choices, other, take, words, tip, variable, entry);
  }

  PlanRow about(Variable subject) {
    return new PlanRow(group, name, text, put, choices, more, putMore, moreChoices, tip, subject, entry);
  }

  /** The same, held by an object of the study. */
  PlanRow heldBy(EObject object) {
    return new PlanRow(group, name, text, put, choices, more, putMore, moreChoices, tip, variable, object);
  }
}
