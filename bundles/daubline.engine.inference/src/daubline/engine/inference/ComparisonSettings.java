package daubline.engine.inference;

import daubline.base.Finding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything a comparison depends on besides the sheets.
 *
 * @param weights how much criteria count
 * @param criteria the user's settings by criterion id and key, numbers in canonical units with a point
 * @param draws Monte Carlo draws, 100 or more
 * @param seed seed of all random numbers
 * @param threads threads to use, 1 or more; changes no result
 * @param alpha compatibility below which the verdict is "not consistent", between 0 and 0.5
 * @param firmness how firm the weights are when they are drawn: as many votes stand behind them; 0 for the number of
 *     criteria (vague), 50 for firm
 * @param sources where settings of the user come from, by {@link #key}
 */
public record ComparisonSettings(Weights weights, Map<String, Map<String, String>> criteria, int draws, long seed,
    int threads, double alpha, double firmness, Map<String, String> sources) {

  private static final int STANDARD_DRAWS = 10_000;
  private static final long STANDARD_SEED = 20_260_101;
  private static final double STANDARD_ALPHA = 0.05;

  public ComparisonSettings {
    criteria = Map.copyOf(criteria);
    sources = Map.copyOf(sources);
    require(draws >= 100 && draws <= 1_000_000, "The number of draws must lie between 100 and 1 000 000, not " + draws);
    require(threads >= 1, "At least one thread is needed, not " + threads);
    require(alpha > 0 && alpha < 0.5, "The limit of compatibility must lie between 0 and 0.5, not " + alpha);
    require(firmness >= 0, "The firmness of weights must be zero or more, not " + firmness);
  }

  private static void require(boolean holds, String message) {
    if (!holds) {
      throw new IllegalArgumentException(message);
    }
  }

  /** Equal weights, standard tolerances, 10 000 draws, a fixed seed, one thread. */
  public static ComparisonSettings standard() {
    return new ComparisonSettings(Weights.equal(), Map.of(), STANDARD_DRAWS, STANDARD_SEED, 1, STANDARD_ALPHA, 0, Map.of());
  }

  /** The same with other weights. */
  public ComparisonSettings with(Weights other) {
    return new ComparisonSettings(other, criteria, draws, seed, threads, alpha, firmness, sources);
  }

  /** The same with other settings of the criteria. */
  public ComparisonSettings with(Map<String, Map<String, String>> other) {
    return new ComparisonSettings(weights, other, draws, seed, threads, alpha, firmness, sources);
  }

  /** The same with other draws, seed and threads. */
  public ComparisonSettings with(int otherDraws, long otherSeed, int otherThreads) {
    return new ComparisonSettings(weights, criteria, otherDraws, otherSeed, otherThreads, alpha, firmness, sources);
  }

  /** The same with another limit of compatibility and firmness of weights. */
  public ComparisonSettings with(double otherAlpha, double otherFirmness) {
    return new ComparisonSettings(weights, criteria, draws, seed, threads, otherAlpha, otherFirmness, sources);
  }

  /** The same with more settings of the criteria, which stand over those it has, and where they come from. */
  public ComparisonSettings withMore(Map<String, Map<String, String>> more, Map<String, String> moreSources) {
    Map<String, Map<String, String>> all = new HashMap<>(criteria);
    more.forEach((criterion, values) -> {
      Map<String, String> merged = new HashMap<>(all.getOrDefault(criterion, Map.of()));
      merged.putAll(values);
      all.put(criterion, merged);
    });
    Map<String, String> allSources = new HashMap<>(sources);
    allSources.putAll(moreSources);
    return new ComparisonSettings(weights, all, draws, seed, threads, alpha, firmness, allSources);
  }

  /** The name of one setting of one criterion among all settings. */
  public static String key(String criterion, String setting) {
    return criterion + "." + setting;
  }

  /** Where the value of a setting comes from: the standard's source, or what the user says. */
  public String sourceOf(Criterion criterion, Setting setting) {
    boolean standard = of(criterion).text(setting.key()).equals(setting.standard());
    return standard ? setting.source().toString() : sources.getOrDefault(key(criterion.id(), setting.key()), "entered by the user");
  }

  /** The settings of one criterion. */
  public SettingValues of(Criterion criterion) {
    return SettingValues.of(criterion, criteria.getOrDefault(criterion.id(), Map.of()));
  }

  /** What is wrong with the settings for these criteria: unknown names, unreadable numbers. */
  public List<Finding> check(List<Criterion> known) {
    List<Finding> findings = new ArrayList<>();
    criteria.forEach((id, values) -> {
      Optional<Criterion> criterion = known.stream().filter(c -> c.id().equals(id)).findFirst();
      if (criterion.isEmpty()) {
        findings.add(unknown("criterion", id));
      } else {
        values.forEach((key, value) -> check(criterion.get(), key, value).ifPresent(findings::add));
      }
    });
    weights.criteria().keySet().stream().filter(id -> known.stream().noneMatch(c -> c.id().equals(id)))
        .forEach(id -> findings.add(unknown("weight", id)));
    return findings;
  }

  private static Optional<Finding> check(Criterion criterion, String key, String value) {
    Optional<Setting> setting = criterion.settings().stream().filter(s -> s.key().equals(key)).findFirst();
    if (setting.isEmpty()) {
      return Optional.of(unknown("setting of " + criterion.name(), key));
    }
    boolean bad = setting.get().isNumber() && SettingValues.parse(value).isEmpty();
    return bad ? Optional.of(Finding.error("setting.number", criterion.name() + ", " + setting.get().name(),
        "“" + value + "” is not a number of zero or more", "enter one, or remove the setting to use the standard value")) : Optional.empty();
  }

  private static Finding unknown(String what, String id) {
    return Finding.warning("setting.unknown", "Comparison settings", "there is no " + what + " “" + id + "”",
        "remove it, or correct its name; it changes nothing as it stands");
  }
}
