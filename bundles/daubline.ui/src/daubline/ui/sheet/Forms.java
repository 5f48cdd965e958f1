package daubline.ui.sheet;

import daubline.base.Deviation;
import daubline.base.Stage;
import daubline.base.Variable;
import daubline.base.Variable.Place;
import daubline.model.Choice;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Reconstruction;
import daubline.model.Sheet;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.session.Readings;
import daubline.ui.Words;
import daubline.ui.prefs.Preferred;
import daubline.ui.record.RecordPages;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;

/** Which columns of values each kind of object has. */
public final class Forms {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;
  private static final double NAME = 2.1;
  /** As much of a property's name as always stands there. */
  static final String NAME_SHOWN = "Base internal dia…";
  /** Key of the column that shows the evidence beside a trial. */
  static final String EVIDENCE = "column.evidence";
  /** Key of the column that shows how far the plan was missed. */
  static final String DEVIATION = "column.deviation";

  private Forms() {
  }

  /** Whether an object has values at all. */
  static boolean has(EObject object) {
    return object instanceof Trial || object instanceof Sheet || object instanceof Reconstruction || object instanceof FurnaceBuild || object instanceof Lot;
  }

  /** The variables that are asked about remains: the values of a sheet, or the column “as found” of a trial. */
  public static List<Variable> remains(EObject object, daubline.base.Variables variables) {
    List<ValueColumn> columns = of(object, () -> null).stream().filter(c -> c.isWritten() && (object instanceof Sheet || c.key().equals("stage.AS_FOUND"))).toList();
    return variables.all().stream().filter(v -> columns.stream().anyMatch(c -> c.isAsked().test(v))).toList();
  }

  /** The share of the column of names. */
  static double nameShare() {
    return NAME;
  }

  /**
   * The columns for an object.
   *
   * @param beside the evidence sheet chosen to stand beside a trial; may say null
   */
  static List<ValueColumn> of(EObject object, Supplier<EvidenceSheet> beside) {
    return switch (object) {
      case Trial trial -> trial(trial, beside);
      case Sheet sheet -> sheet(sheet);
      case Reconstruction reconstruction -> reconstruction(reconstruction);
      case FurnaceBuild build -> List.of(staged("stage.PLANNED", Stage.PLANNED, Place.PLANNED, build::getValues),
          staged("stage.AS_BUILT", Stage.AS_BUILT, Place.BUILT, build::getValues), deviation(build::getValues),
          how(v -> at(build.getValues(), Stage.AS_BUILT, v)));
      case Lot lot -> lot(lot);
      default -> List.of();
    };
  }

  private static List<ValueColumn> trial(Trial trial, Supplier<EvidenceSheet> beside) {
    ValueColumn found = new ValueColumn("stage.AS_FOUND", 1, v -> v.isAt(Place.REMAINS),
        v -> trial.getRemains() == null ? List.of() : about(trial.getRemains().getClaims().stream().filter(BlindRecordings::isSeen).toList(), v), v -> claim(RecordPages.remains(trial), v), Shown::amount);
    return OpenStudy.isBlind(trial) ? List.of(found) : List.of(planned(trial), asBuilt(trial),
        staged("stage.AS_FIRED", Stage.AS_FIRED, Place.FIRED, trial::getValues), found,
        new ValueColumn(EVIDENCE, 1.3, v -> v.isAt(Place.REMAINS),
            v -> beside.get() == null ? List.of() : about(beside.get().getClaims(), v), null, Shown::amount),
        deviation(() -> ofTrialAndBuild(trial)));
  }

  /** A trial without a plan of its own follows that of its furnace. */
  private static ValueColumn planned(Trial trial) {
    return new ValueColumn("stage.PLANNED", 1, v -> v.isAt(Place.PLANNED), v -> {
      List<StagedValue> own = at(trial.getValues(), Stage.PLANNED, v);
      return own.isEmpty() ? at(ofTrialAndBuild(trial), Stage.PLANNED, v) : own;
    }, v -> stagedValue(trial.getValues(), Stage.PLANNED), Shown::amount);
  }

  /** What was measured on the furnace stands with the furnace, which several trials may share. */
  private static ValueColumn asBuilt(Trial trial) {
    return new ValueColumn("stage.AS_BUILT", 1, v -> v.isAt(Place.BUILT), v -> at(ofTrialAndBuild(trial), Stage.AS_BUILT, v),
        v -> stagedValue(trial.getBuild() == null ? trial.getValues() : trial.getBuild().getValues(), Stage.AS_BUILT), Shown::amount);
  }

  private static List<StagedValue> ofTrialAndBuild(Trial trial) {
    List<StagedValue> all = new ArrayList<>(trial.getValues());
    if (trial.getBuild() != null) {
      all.addAll(trial.getBuild().getValues());
    }
    return all;
  }

  /** As built, or where it is nothing to build as fired, less planned. */
  private static ValueColumn deviation(Supplier<List<StagedValue>> values) {
    return read(DEVIATION, 0.9, v -> {
      List<StagedValue> built = at(values.get(), Stage.AS_BUILT, v);
      return at(values.get(), Stage.PLANNED, v).isEmpty() ? List.of() : built.isEmpty() ? at(values.get(), Stage.AS_FIRED, v) : built;
    }, (actual, v) -> Deviation.of(Readings.amount(at(values.get(), Stage.PLANNED, v).get(0)), Readings.amount(actual))
        .map(d -> Preferred.sign(Deviation.printed(d, Shown.unit(v)))).orElse(""));
  }

  private static List<ValueColumn> sheet(Sheet sheet) {
    return List.of(new ValueColumn("column.value", 1.2, v -> v.isAt(Place.REMAINS), v -> about(sheet.getClaims(), v), v -> claim(sheet, v), Shown::amount),
        read("column.origin", 1.9, v -> about(sheet.getClaims(), v), (r, v) -> Shown.origin(r)),
        read("column.confidence", 0.8, v -> about(sheet.getClaims(), v), (r, v) -> r.getConfidence() == null ? "" : Words.of(r.getConfidence())),
        read("column.picked", 1, v -> about(sheet.getClaims(), v), (r, v) -> r.isPicked() ? Words.of("picked", Shown.text(r.getPickedBecause())) : ""));
  }

  private static List<ValueColumn> reconstruction(Reconstruction r) {
    return List.of(new ValueColumn("column.value", 1.2, v -> v.isAt(Place.PLANNED), v -> about(r.getChoices(), v), v -> {
      Choice choice = MAKE.createChoice();
      r.getChoices().add(choice);
      return choice;
    }, Shown::amount), read("column.basis", 0.9, v -> about(r.getChoices(), v), (c, v) -> ((Choice) c).getBasis() == null ? "" : Words.of(((Choice) c).getBasis())),
        read("column.because", 2.2, v -> about(r.getChoices(), v), (c, v) -> Shown.text(((Choice) c).getBecause())));
  }

  private static List<ValueColumn> lot(Lot lot) {
    return List.of(new ValueColumn("column.value", 1.2, v -> v.isAt(Place.LOT), v -> about(lot.getValues(), v), v -> {
      Reading reading = MAKE.createReading();
      lot.getValues().add(reading);
      return reading;
    }, Shown::amount), how(v -> about(lot.getValues(), v)));
  }

  private static ValueColumn how(java.util.function.Function<Variable, List<? extends Reading>> readings) {
    return read("column.how", 1, readings, (r, v) -> r.getHow() == null ? "" : Words.of(r.getHow()));
  }

  private static ValueColumn read(String key, double share, java.util.function.Function<Variable, List<? extends Reading>> readings,
      BiFunction<Reading, Variable, String> print) {
    return new ValueColumn(key, share, v -> false, readings, null, print);
  }

  private static ValueColumn staged(String key, Stage stage, Place place, Supplier<List<StagedValue>> values) {
    return new ValueColumn(key, 1, v -> v.isAt(place), v -> at(values.get(), stage, v), v -> stagedValue(values.get(), stage), Shown::amount);
  }

  private static StagedValue stagedValue(List<StagedValue> values, Stage stage) {
    StagedValue value = MAKE.createStagedValue();
    value.setStage(stage);
    values.add(value);
    return value;
  }

  private static Claim claim(Sheet sheet, Variable variable) {
    Claim claim = MAKE.createClaim();
    sheet.getClaims().add(claim);
    return claim;
  }

  private static List<StagedValue> at(List<StagedValue> values, Stage stage, Variable variable) {
    return values.stream().filter(v -> v.getStage() == stage && variable.id().equals(v.getVariable())).toList();
  }

  private static <R extends Reading> List<R> about(List<R> readings, Variable variable) {
    return readings.stream().filter(r -> variable.id().equals(r.getVariable())).toList();
  }
}
