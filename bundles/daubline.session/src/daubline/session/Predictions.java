package daubline.session;

import daubline.base.TrialStatus;
import daubline.model.ModelFactory;
import daubline.model.Prediction;
import daubline.model.Trial;

/** What may still be done to what was stated before a fire: nothing once the fire has begun, except to state it anew beside it. */
public final class Predictions {

  private Predictions() {
  }

  /** Whether the fire of a trial has begun: its log has an entry, or its status says so. */
  public static boolean hasBegun(Trial trial) {
    return !trial.getLog().isEmpty() || TrialStatus.of(trial.getStatus()).isBurnt();
  }

  /** Whether a prediction can no longer be changed: its plan was frozen or its fire has begun. One without a value is not stated yet. */
  public static boolean isLocked(Prediction prediction) {
    return prediction.getKind() != null && (prediction.isLocked() || prediction.eContainer() instanceof Trial trial && hasBegun(trial));
  }

  /** The number of a prediction in its chain of versions, from 1. */
  public static int version(Prediction prediction) {
    int version = 1;
    for (Prediction p = prediction.getRevises(); p != null && version < 1000; p = p.getRevises()) {
      version++;
    }
    return version;
  }

  /**
   * The prediction to write a value into, for use inside a change: itself while it is open, otherwise a new version that
   * stands after it and names it; what was stated first stays as it was.
   *
   * @param now when the new version is stated, ISO 8601
   */
  public static Prediction writable(Prediction prediction, String now) {
    if (!isLocked(prediction)) {
      return prediction;
    }
    Trial trial = (Trial) prediction.eContainer();
    Prediction next = ModelFactory.eINSTANCE.createPrediction();
    next.setVariable(prediction.getVariable());
    next.setReconstruction(prediction.getReconstruction());
    next.setStatedOn(now);
    next.setRevises(prediction);
    trial.getPredictions().add(trial.getPredictions().indexOf(prediction) + 1, next);
    return next;
  }
}
