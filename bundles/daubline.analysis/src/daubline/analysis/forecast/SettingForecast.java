package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Stage;
import daubline.base.Variables;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnInputs;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reconstruction;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Forecasts trials that are only thought of: the values of a trial that is like them, with some settings changed. Nothing of
 * the study is touched.
 */
public final class SettingForecast {

  private final List<StagedValue> usual;
  private final List<Lot> lots;
  private final Variables variables;
  private final Optional<Reconstruction> reconstruction;
  private final Optional<AssumedValues> assumptions;

  private SettingForecast(SettingForecast of, AssumedValues assumptions) {
    usual = of.usual;
    lots = of.lots;
    variables = of.variables;
    reconstruction = of.reconstruction;
    this.assumptions = Optional.of(assumptions);
  }

  /**
   * A forecaster that assumes nothing.
   *
   * @param like a trial that is like those thought of; empty when there is none
   * @param lots the lots that will be charged; those of the trial when empty
   * @param reconstruction the reconstruction that fills what is not set; that of the trial when empty
   */
  public SettingForecast(Optional<Trial> like, List<Lot> lots, Optional<Reconstruction> reconstruction, Variables variables) {
    this.variables = variables;
    assumptions = Optional.empty();
    this.reconstruction = reconstruction.or(() -> like.map(Trial::getReconstruction));
    this.lots = lots.isEmpty() ? like.map(t -> List.copyOf(t.getLots())).orElse(List.of()) : lots;
    usual = new ArrayList<>();
    like.ifPresent(t -> {
      usual.addAll(t.getValues());
      if (t.getBuild() != null && (reconstruction.isEmpty() || reconstruction.get() == t.getReconstruction())) {
        usual.addAll(t.getBuild().getValues());
      }
    });
  }

  /** The same, with something assumed where nothing is known. */
  public SettingForecast assuming(AssumedValues values) {
    return new SettingForecast(this, values);
  }

  /** What is assumed at these settings, in words; empty without assumptions. */
  public List<String> assumed(Map<String, Amount> settings) {
    return assumptions.map(a -> a.of(trial(settings)).stream().map(a::text).toList()).orElse(List.of());
  }

  /** The forecast at these settings, in canonical units by variable; empty when too little is known. */
  public Optional<BurnForecast> at(Map<String, Amount> settings, int draws, long seed) {
    return inputs(settings).build().map((BurnInputs in) -> BurnForecast.of(in, draws, seed));
  }

  /** What is missing for a forecast at these settings. */
  public List<Finding> missing(Map<String, Amount> settings) {
    ForecastInputs inputs = inputs(settings);
    inputs.build();
    return inputs.findings();
  }

  private ForecastInputs inputs(Map<String, Amount> settings) {
    Trial trial = trial(settings);
    assumptions.ifPresent(a -> a.of(trial).forEach(value -> trial.getValues().add(AssumedValues.value(value))));
    return new ForecastInputs(trial, variables, Overlay.NONE);
  }

  private Trial trial(Map<String, Amount> settings) {
    Trial trial = ModelFactory.eINSTANCE.createTrial();
    trial.setName("a trial thought of");
    trial.setId("");
    trial.getLots().addAll(lots);
    reconstruction.ifPresent(trial::setReconstruction);
    settings.forEach((variable, amount) -> {
      StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
      value.setId("");
      value.setVariable(variable);
      // built values are looked at first, and a setting thought of comes before everything
      value.setStage(Stage.AS_BUILT);
      Readings.put(value, amount);
      trial.getValues().add(value);
    });
    usual.stream().filter(v -> !settings.containsKey(v.getVariable())).forEach(v -> trial.getValues().add(EcoreUtil.copy(v)));
    return trial;
  }
}
