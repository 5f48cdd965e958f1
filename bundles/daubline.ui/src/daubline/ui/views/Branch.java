package daubline.ui.views;

import daubline.ui.look.Icon;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;

/**
 * A branch of the study tree that holds objects of one kind.
 *
 * @param study the study
 * @param key key of its name in the messages
 * @param icon its icon
 * @param content what hangs on it
 */
record Branch(OpenStudy study, String key, Icon icon, List<? extends EObject> content) implements BranchOwner {

  private static final Set<String> COVERED = Set.of("tree.sites", "tree.reconstructions", "tree.builds", "tree.lots");

  /** The branches of a study, in the order of the work. */
  static List<Branch> of(OpenStudy study) {
    var model = study.session().study();
    return List.of(new Branch(study, "tree.sites", Icon.SITE, model.getSites()),
        new Branch(study, "tree.reconstructions", Icon.RECONSTRUCTION, model.getReconstructions()),
        new Branch(study, "tree.builds", Icon.DAUBLINE, model.getBuilds()),
        new Branch(study, "tree.series", Icon.SERIES, model.getSeries()),
        new Branch(study, "tree.lots", Icon.LOT, model.getLots()),
        new Branch(study, "tree.citations", Icon.CITATION, model.getCitations()),
        new Branch(study, "tree.people", Icon.PERSON, model.getPeople()),
        new Branch(study, "tree.residueClasses", Icon.SLAG, model.getResidueClasses()),
        new Branch(study, "tree.variables", Icon.SAMPLE, model.getVariables()));
  }

  /** Whether its names would tell of run or evidence to whoever records blind; it stays closed then. */
  boolean isCovered() {
    return study.blind().isPresent() && COVERED.contains(key);
  }

  /** The same branch stays expanded when the study changed under it. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Branch b && b.study == study && b.key.equals(key);
  }

  @Override
  public int hashCode() {
    return 31 * study.hashCode() + key.hashCode();
  }
}
