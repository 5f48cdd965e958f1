package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.base.Variables;
import daubline.model.Identified;
import daubline.model.Named;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;

/** The study that checks look through, and what they found. */
public final class CheckedStudy {

  private final StudySession session;
  private final Variables variables;
  private final List<Finding> findings = new ArrayList<>();

  CheckedStudy(StudySession session) {
    this.session = session;
    this.variables = StudyVariables.of(session.study());
  }

  /** The study. */
  public Study study() {
    return session.study();
  }

  /** The folder its data files are relative to. */
  public Path folder() {
    return session.folder();
  }

  /** The catalogue with the study's own variables. */
  public Variables variables() {
    return variables;
  }

  /** Visits every object of a type. */
  public <T extends EObject> void each(Class<T> type, Consumer<T> visitor) {
    for (Iterator<EObject> all = study().eAllContents(); all.hasNext();) {
      EObject object = all.next();
      if (type.isInstance(object)) {
        visitor.accept(type.cast(object));
      }
    }
  }

  /** Visits every trial. */
  public void eachTrial(Consumer<Trial> visitor) {
    for (Series series : study().getSeries()) {
      series.getTrials().forEach(visitor);
    }
  }

  /** Reports a finding about an object; its place is the path of names that leads to it. */
  public void report(Finding finding, EObject object, String variable) {
    String id = object instanceof Identified identified && identified.getId() != null ? identified.getId() : "";
    findings.add(finding.at(place(object)).about(id, variable == null ? "" : variable));
  }

  /** The findings so far. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** The names that lead to an object, such as "Aldervale · Furnace 2". */
  public static String place(EObject object) {
    List<String> names = new ArrayList<>();
    for (EObject step = object; step != null && !(step instanceof Study); step = step.eContainer()) {
      if (step instanceof Named named && named.getName() != null && !named.getName().isBlank()) {
        names.add(0, named.getName());
      } else if (step instanceof Treatment treatment && treatment.getStep() != null) {
        names.add(0, (treatment.getStep() + " " + (treatment.getOn() == null ? "" : treatment.getOn())).strip());
      } else if (step instanceof Named) {
        names.add(0, step.eClass().getName() + " " + ((Identified) step).getId());
      }
    }
    return names.isEmpty() ? "study" : String.join(" · ", names);
  }
}
