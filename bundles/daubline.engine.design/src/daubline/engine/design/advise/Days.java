package daubline.engine.design.advise;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Run;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Puts trials of different furnaces on the same days. */
final class Days {

  private Days() {
  }

  /** So many trials a day at most, no furnace twice, and what is set for a day the same for all of them. */
  static Design share(Design design, int perDay) {
    if (perDay <= 1) {
      return design;
    }
    List<Run> placed = new ArrayList<>(design.runs().stream().filter(Run::done).toList());
    int next = placed.stream().mapToInt(Run::day).max().orElse(-1) + 1;
    for (Run run : design.runs()) {
      if (!run.done()) {
        Optional<Integer> day = IntStream.range(placed.isEmpty() ? 0 : firstNew(placed), next).boxed().filter(d -> hasRoom(design, placed, d, run, perDay)).findFirst();
        placed.add(new Run(run.setting(), run.furnace(), day.orElse(next), false));
        next = day.isPresent() ? next : next + 1;
      }
    }
    return new Design(design.name(), design.factors(), placed, design.notes());
  }

  private static int firstNew(List<Run> placed) {
    return placed.stream().filter(Run::done).mapToInt(Run::day).max().orElse(-1) + 1;
  }

  private static boolean hasRoom(Design design, List<Run> placed, int day, Run run, int perDay) {
    List<Run> there = placed.stream().filter(r -> r.day() == day).toList();
    return there.size() < perDay && there.stream().allMatch(r -> r.furnace() != run.furnace() && IntStream.range(0, design.factors().size())
        .allMatch(j -> design.factors().get(j).change() != Change.EACH_DAY || r.setting()[j] == run.setting()[j]));
  }
}
