package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Prediction;
import daubline.model.Reconstruction;
import daubline.model.Trial;
import daubline.session.Predictions;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the remains will show if the reconstruction is right, stated before the fire. Once the fire has begun nothing
 * stated is overwritten: another value becomes a new version after it.
 */
public final class PredictionTable extends ObjectTable<Prediction> {

  private final Trial trial;
  private final Supplier<Instant> clock;
  private final OwnVariable variables;

  /** The predictions of a trial. */
  public PredictionTable(Desk desk, Trial trial, Supplier<Instant> clock) {
    super("predictions", desk);
    this.trial = trial;
    this.clock = clock;
    variables = new OwnVariable(desk, v -> v.isAt(Variable.Place.REMAINS) || v.isAt(Variable.Place.FIRED));
    refresh();
  }

  @Override
  protected List<Prediction> find() {
    return trial.getPredictions();
  }

  @Override
  protected Prediction begin() {
    Prediction made = ModelFactory.eINSTANCE.createPrediction();
    made.setStatedOn(now());
    made.setReconstruction(trial.getReconstruction());
    trial.getPredictions().add(made);
    return made;
  }

  private String now() {
    return clock.get().truncatedTo(ChronoUnit.SECONDS).toString();
  }

  @Override
  protected List<EntryColumn<Prediction>> make() {
    return List.of(variables.property(1.8), variables.value(1.2, p -> Predictions.writable(p, now())),
        Columns.<Prediction, Reconstruction>named("reconstruction", 1.2, Literals.PREDICTION__RECONSTRUCTION, Reconstruction.class,
            () -> desk().session().study().getReconstructions()).askedWhen(p -> false),
        Columns.<Prediction>text("note", 1.6, Literals.READING__NOTE),
        EntryColumn.<Prediction>shown("statedOn", 1.4, p -> Columns.text(p.getStatedOn()).replace("T", " ").replace("Z", " UTC")).dated(),
        EntryColumn.shown("state", 1.2, this::state));
  }

  private String state(Prediction p) {
    String locked = desk().words().of(Predictions.isLocked(p) ? "predictions.locked" : "predictions.open");
    return Predictions.version(p) == 1 ? locked : desk().words().of("predictions.version", Predictions.version(p)) + ", " + locked;
  }

  @Override
  protected Optional<Finding> refusal(Prediction object, EntryColumn<Prediction> column, String text) {
    if (column.id().equals("value")) {
      return variables.refusal(object, text);
    }
    return object != null && Predictions.isLocked(object) ? Optional.of(Finding.error("prediction.locked", "",
        "it was stated before the fire and is locked", "type another value: it becomes a new version, and this one stays")) : Optional.empty();
  }

  @Override
  public boolean canRemove(int row) {
    return super.canRemove(row) && !Predictions.isLocked(at(row));
  }
}
