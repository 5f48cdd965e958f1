package daubline.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A table of trials.
 *
 * @param name what kind of design it is, in words
 * @param factors the factors, in the order of a setting
 * @param runs the trials; an order of burning only after {@link Randomiser}
 * @param notes what the reader must know, such as the defining relation
 */
public record Design(String name, List<Factor> factors, List<Run> runs, List<String> notes) {

  public Design {
    factors = List.copyOf(factors);
    runs = List.copyOf(runs);
    notes = List.copyOf(notes);
    for (int i = 0; i < runs.size(); i++) {
      if (runs.get(i).setting().length != factors.size()) {
        throw new IllegalArgumentException("trial " + (i + 1) + " has " + runs.get(i).setting().length
            + " settings for " + factors.size() + " factors");
      }
    }
  }

  /** Trials each in a furnace of its own. */
  public static Design independent(String name, List<Factor> factors, double[][] settings, String... notes) {
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < settings.length; i++) {
      runs.add(Run.alone(i, settings[i]));
    }
    return new Design(name, factors, runs, List.of(notes));
  }

  /** How many trials. */
  public int size() {
    return runs.size();
  }

  /** The coded settings. */
  public List<double[]> settings() {
    return runs.stream().map(Run::setting).toList();
  }

  /** The furnace of each trial. */
  public int[] furnaces() {
    return runs.stream().mapToInt(Run::furnace).toArray();
  }

  /** The day of each trial. */
  public int[] days() {
    return runs.stream().mapToInt(Run::day).toArray();
  }

  /** How many different furnaces. */
  public int furnaceCount() {
    return (int) IntStream.of(furnaces()).distinct().count();
  }

  /** Whether any furnace is burnt more than once. */
  public boolean sharesFurnaces() {
    return furnaceCount() < size();
  }

  /** On how many different days. */
  public int dayCount() {
    return (int) IntStream.of(days()).distinct().count();
  }

  /** Whether there are several days and some day has more than one trial, so that trials share its weather and its crew. */
  public boolean sharesDays() {
    return dayCount() > 1 && dayCount() < size();
  }

  /** The same trials without one of them. */
  public Design without(int trial) {
    List<Run> rest = new ArrayList<>(runs);
    rest.remove(trial);
    return new Design(name, factors, rest, notes);
  }

  /** The same trials in furnaces given one by one. */
  public Design inFurnaces(int... furnaces) {
    List<Run> placed = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      placed.add(new Run(runs.get(i).setting(), furnaces[i], runs.get(i).day(), runs.get(i).done()));
    }
    return new Design(name, factors, placed, notes);
  }

  /** A trial as text: each factor with its setting. */
  public String text(int trial) {
    double[] setting = runs.get(trial).setting();
    return IntStream.range(0, factors.size()).mapToObj(j -> factors.get(j).name() + " " + factors.get(j).show(setting[j]))
        .collect(java.util.stream.Collectors.joining(", "));
  }
}
