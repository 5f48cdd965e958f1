package daubline.engine.design.search;

import daubline.engine.design.Model;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What an optimal design is wanted for.
 *
 * @param space the settings allowed
 * @param model what must be estimable
 * @param criterion what the design is to be best at
 * @param strata how alike the trials of a furnace and of a day are thought to be
 * @param done trials already burnt, which stay as they are
 * @param furnaces the furnace of each new trial; the number of a furnace already used burns it once more
 * @param days the day of each new trial
 * @param starts random starts, 1 or more
 * @param seed the seed of the starts
 * @param steps how many even steps a factor without levels is tried on, 2 or more
 * @param polish whether the settings of factors without levels are refined between the steps
 */
public record SearchRequest(Space space, Model model, Criterion criterion, Strata strata, List<Run> done, int[] furnaces,
    int[] days, int starts, long seed, int steps, boolean polish) {

  /** Checks the sizes. @throws IllegalArgumentException saying what is too few */
  public SearchRequest {
    done = List.copyOf(done);
    furnaces = furnaces.clone();
    days = days.clone();
    if (furnaces.length != days.length || furnaces.length == 0) {
      throw new IllegalArgumentException("each new trial needs a furnace and a day: " + furnaces.length + " furnaces, "
          + days.length + " days");
    }
    if (done.size() + furnaces.length < model.size()) {
      throw new IllegalArgumentException("the model has " + model.size() + " unknowns, more than the "
          + (done.size() + furnaces.length) + " trials; burn more or ask fewer questions");
    }
    if (starts < 1 || steps < 2) {
      throw new IllegalArgumentException("a search needs a start and two steps, not " + starts + " and " + steps);
    }
  }

  /** New trials each in a furnace of its own. */
  public static SearchRequest independent(Space space, Model model, int trials, long seed) {
    int[] own = IntStream.range(0, trials).toArray();
    return new SearchRequest(space, model, Criterion.EFFECTS, Strata.NONE, List.of(), own, own, 50, seed,
        space.rules().isEmpty() ? 3 : 5, false);
  }

  /** New trials in so many furnaces, as evenly as can be, every trial on a day of its own. */
  public static SearchRequest inFurnaces(Space space, Model model, int trials, int furnaces, Strata strata, long seed) {
    return added(List.of(), space, model, trials, furnaces, strata, seed);
  }

  /** The same after trials already burnt, in furnaces and on days that come after theirs. */
  public static SearchRequest added(List<Run> done, Space space, Model model, int trials, int furnaces, Strata strata, long seed) {
    int furnace = done.stream().mapToInt(Run::furnace).max().orElse(-1) + 1;
    int day = done.stream().mapToInt(Run::day).max().orElse(-1) + 1;
    int[] placed = IntStream.range(0, trials).map(i -> furnace + (int) ((long) i * furnaces / trials)).toArray();
    return new SearchRequest(space, model, Criterion.EFFECTS, strata, done, placed, IntStream.range(day, day + trials).toArray(),
        50, seed, space.rules().isEmpty() ? 3 : 5, false);
  }

  /** The same request, best at something else. */
  public SearchRequest with(Criterion other) {
    return new SearchRequest(space, model, other, strata, done, furnaces, days, starts, seed, steps, polish);
  }

  /** The same request with other random starts. */
  public SearchRequest withStarts(int number) {
    return new SearchRequest(space, model, criterion, strata, done, furnaces, days, number, seed, steps, polish);
  }

  /** The same request with finer settings. */
  public SearchRequest withSteps(int number, boolean refine) {
    return new SearchRequest(space, model, criterion, strata, done, furnaces, days, starts, seed, number, refine);
  }

  /** The same request with so many trials a day at most, each in another furnace; furnaces that share a day share all of theirs. */
  public SearchRequest sharingDays(int perDay) {
    int first = IntStream.of(furnaces).min().orElse(0);
    int day = done.stream().mapToInt(Run::day).max().orElse(-1) + 1;
    int[] burns = new int[IntStream.of(furnaces).max().orElse(0) - first + 1];
    int[] shared = IntStream.of(furnaces).map(f -> day + (f - first) / perDay * furnaces.length + burns[f - first]++).toArray();
    return new SearchRequest(space, model, criterion, strata, done, furnaces, shared, starts, seed, steps, polish);
  }

  /** The same request after these trials. */
  public SearchRequest after(List<Run> burnt) {
    return new SearchRequest(space, model, criterion, strata, burnt, furnaces, days, starts, seed, steps, polish);
  }

  /** The furnaces of all trials, those burnt first. */
  int[] allFurnaces() {
    return IntStream.concat(done.stream().mapToInt(Run::furnace), IntStream.of(furnaces)).toArray();
  }

  int[] allDays() {
    return IntStream.concat(done.stream().mapToInt(Run::day), IntStream.of(days)).toArray();
  }

  List<double[]> doneSettings() {
    return new ArrayList<>(done.stream().map(Run::setting).toList());
  }
}
