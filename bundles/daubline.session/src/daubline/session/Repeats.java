package daubline.session;

import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.model.Identified;
import daubline.model.Series;
import daubline.model.Trial;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Repeats of trials. */
public final class Repeats {

  private Repeats() {
  }

  /**
   * A trial to be burnt again: same plan, furnace, lots and measures, linked to the one it repeats, and nothing of that one's
   * outcome. It stands in no series yet.
   *
   * @param original a trial of a series
   * @param name its name
   */
  public static Trial of(Trial original, String name) {
    Trial copy = EcoreUtil.copy(original);
    EarlierValues.forget(List.of(copy));
    List.of(copy.getLog(), copy.getLoggers(), copy.getPieces(), copy.getSamples(), copy.getAnalyses(), copy.getFiles(), copy.getVisits(), copy.getPredictions())
        .forEach(List::clear);
    copy.getValues().removeIf(v -> v.getStage() != Stage.PLANNED);
    copy.setRemains(null);
    copy.setConclusion(null);
    copy.setOn(null);
    copy.setReadyBecause(null);
    copy.setExcluded(false);
    copy.setExcludedBecause(null);
    copy.setRepeatOf(original);
    copy.setKind(TrialKind.REPEAT);
    copy.setStatus(TrialStatus.PLANNED);
    copy.setName(name);
    copy.setNumber(1 + ((Series) original.eContainer()).getTrials().stream().map(Trial::getNumber).filter(Objects::nonNull).mapToInt(Integer::intValue).max().orElse(0));
    copy.setId(null);
    for (Iterator<EObject> parts = copy.eAllContents(); parts.hasNext();) {
      if (parts.next() instanceof Identified part) {
        part.setId(null);
      }
    }
    return copy;
  }
}
