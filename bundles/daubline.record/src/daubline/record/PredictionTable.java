package daubline.record;

import daubline.base.Finding;
import daubline.base.Variable;
import daubline.base.Variables;
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

  /** The predictions of a trial. */
  public PredictionTable(Desk desk, Trial trial, Supplier<Instant> clock) {
    super("predictions", desk);
    this.trial = trial;
    this.clock = clock;
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
    return List.of(
        EntryColumn.<Prediction>typed("property", 1.8, this::property, this::readProperty).offering(p -> predictable().stream().map(Variable::name).toList()),
        EntryColumn.<Prediction>typed("value", 1.2, p -> p.getKind() == null ? "" : variable(p).map(v -> Columns.print(p, v)).orElse(Columns.text(p.getTyped())), this::readValue)
            .offering(p -> p == null ? List.of() : variable(p).map(Columns::offered).orElse(List.of())),
        Columns.<Prediction, Reconstruction>named("reconstruction", 1.2, Literals.PREDICTION__RECONSTRUCTION, Reconstruction.class,
            () -> desk().session().study().getReconstructions()).askedWhen(p -> false),
        Columns.<Prediction>text("note", 1.6, Literals.READING__NOTE),
        EntryColumn.shown("statedOn", 1.4, p -> Columns.text(p.getStatedOn()).replace("T", " ").replace("Z", " UTC")),
        EntryColumn.shown("state", 1.2, this::state));
  }

  private String state(Prediction p) {
    String locked = desk().words().of(Predictions.isLocked(p) ? "predictions.locked" : "predictions.open");
    return Predictions.version(p) == 1 ? locked : desk().words().of("predictions.version", Predictions.version(p)) + ", " + locked;
  }

  private Variables variables() {
    return desk().variables();
  }

  private List<Variable> predictable() {
    return variables().all().stream().filter(v -> v.isAt(Variable.Place.REMAINS) || v.isAt(Variable.Place.FIRED)).toList();
  }

  private Optional<Variable> variable(Prediction p) {
    return variables().find(Columns.text(p.getVariable()));
  }

  private String property(Prediction p) {
    return variable(p).map(Variable::name).orElse(Columns.text(p.getVariable()));
  }

  private Entry<Prediction> readProperty(String typed) {
    Optional<Variable> meant = predictable().stream().filter(v -> v.name().equalsIgnoreCase(typed) || v.id().equals(typed)).findFirst();
    return meant.map(v -> Entry.<Prediction>of(p -> p.setVariable(v.id())))
        .orElseGet(() -> Entry.wrong("value.variable", "“" + typed + "” is no property that a fire or its remains can show", "choose one of the list"));
  }

  /** The variable of a value is that of its row, so the text is understood when it is put. */
  private Entry<Prediction> readValue(String typed) {
    return Entry.of(p -> {
      Prediction into = Predictions.writable(p, now());
      variable(p).ifPresent(v -> Columns.<Prediction>value(desk(), v, typed, (nothing, change) -> {
        if (change != null) {
          change.accept(into);
        }
      }).change().accept(into));
    });
  }

  @Override
  protected Optional<Finding> refusal(Prediction object, EntryColumn<Prediction> column, String text) {
    boolean value = column.id().equals("value");
    if (value && (object == null || variable(object).isEmpty())) {
      return Optional.of(Finding.error("prediction.property", "", "no property is chosen for this value", "choose the property first"));
    }
    if (value) {
      Entry<Prediction> entry = text.isBlank() ? Entry.wrong("value.empty", "a prediction needs a value", "type one, or delete the row while it is open")
          : Columns.value(desk(), variable(object).orElseThrow(), text, (nothing, change) -> { });
      return entry.isRead() ? Optional.empty() : Optional.of(entry.complaint());
    }
    return object != null && Predictions.isLocked(object) ? Optional.of(Finding.error("prediction.locked", "",
        "it was stated before the fire and is locked", "type another value: it becomes a new version, and this one stays")) : Optional.empty();
  }

  @Override
  public boolean canRemove(int row) {
    return super.canRemove(row) && !Predictions.isLocked(at(row));
  }
}
