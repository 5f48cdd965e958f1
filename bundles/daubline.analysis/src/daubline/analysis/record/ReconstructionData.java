package daubline.analysis.record;

import daubline.base.Amount;
import daubline.base.Basis;
import daubline.base.Trail;
import daubline.analysis.forecast.FurnaceShape;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A reconstruction: what was chosen, and what each choice rests on.
 *
 * @param id its id
 * @param name its name
 * @param hypothesis what it claims, or empty
 * @param retired whether it was given up
 * @param choices in the order in which they were made
 * @param shape the furnace of its choices, with the height to which its sheets give evidence
 */
public record ReconstructionData(String id, String name, String hypothesis, boolean retired, List<Chosen> choices, FurnaceShape shape) {

  public ReconstructionData {
    choices = List.copyOf(choices);
  }

  /**
   * One choice.
   *
   * @param variable what was chosen
   * @param amount the value
   * @param typed the value as typed with its unit, or empty
   * @param basis what it rests on; null when that is not said
   * @param because the reason, or empty
   * @param trail where it came from
   */
  public record Chosen(String variable, Amount amount, String typed, Basis basis, String because, Trail trail) {
  }

  /** How many choices rest on each basis. */
  public Map<Basis, Integer> counts() {
    Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
    choices.stream().filter(c -> c.basis() != null).forEach(c -> counts.merge(c.basis(), 1, Integer::sum));
    return counts;
  }

  /** The number of choices whose basis is not said. */
  public int unsaid() {
    return (int) choices.stream().filter(c -> c.basis() == null).count();
  }

  /** The share of guesses among the choices, 0 to 1; a choice without basis counts as a guess. NaN without choices. */
  public double guesses() {
    return choices.isEmpty() ? Double.NaN : (counts().getOrDefault(Basis.GUESS, 0) + unsaid()) / (double) choices.size();
  }

  /** What was chosen about a variable; more than one where alternatives stand side by side. */
  public List<Chosen> about(String variable) {
    return choices.stream().filter(c -> c.variable().equals(variable)).toList();
  }
}
