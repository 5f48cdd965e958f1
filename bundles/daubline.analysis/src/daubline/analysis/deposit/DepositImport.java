package daubline.analysis.deposit;

import daubline.base.Finding;
import daubline.session.StudySession;
import java.util.List;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads the rows of a deposit into an empty study, as one change that can be undone. */
public final class DepositImport {

  private DepositImport() {
  }

  /**
   * Fills an empty study.
   *
   * @param session an open study without content
   * @param tables the rows of the deposit
   * @return what is wrong; when it holds an error, nothing was taken over
   */
  public static List<Finding> into(StudySession session, List<Rows> tables) {
    if (!session.study().eContents().isEmpty()) {
      return List.of(Finding.error("deposit.filled", session.folder().toString(), "the study holds something already", "read a deposit into a new study"));
    }
    StudyFromRows.Result read = StudyFromRows.read(tables);
    if (read.findings().isEmpty()) {
      session.edit("Read deposit", () -> move(read.study(), session.study()));
    }
    return read.findings();
  }

  @SuppressWarnings("unchecked")
  private static EList<EObject> parts(EObject object, EStructuralFeature feature) {
    return (EList<EObject>) object.eGet(feature);
  }

  private static void move(EObject from, EObject to) {
    for (EStructuralFeature feature : from.eClass().getEAllStructuralFeatures()) {
      if (feature.isMany()) {
        parts(to, feature).addAll(List.copyOf(parts(from, feature)));
      } else if (from.eIsSet(feature)) {
        to.eSet(feature, from.eGet(feature));
      }
    }
  }
}
