package daubline.engine.design.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * When furnaces are built, dried, burnt and mended, each as early as hands allow, in the order of the plan. Days count
 * from 0, the first day of the season; work is done on open days only, drying goes on every day and needs nobody.
 *
 * @param bars the pieces of work
 * @param people how many are at work each day
 * @param personDays the days of work of all together
 * @param days how many days until the last burn is done, closed ones among them
 */
public record Timetable(List<Bar> bars, int[] people, int personDays, int days) {

  /**
   * How long things take and how many hands they want.
   *
   * @param team how many people come each day, 1 or more
   * @param buildDays days to build a furnace
   * @param buildPeople hands to build
   * @param dryDays days until a new furnace can be burnt
   * @param burnDays days for a burn with clearing and recording
   * @param burnPeople hands at a burn
   * @param refitDays days to mend a furnace after a burn
   * @param refitPeople hands to mend
   * @param refitDryDays days until a mended furnace can be burnt
   */
  public record Work(int team, int buildDays, int buildPeople, int dryDays, int burnDays, int burnPeople, int refitDays,
      int refitPeople, int refitDryDays) {

    /** Checks that the team can do each piece. @throws IllegalArgumentException when a piece wants more hands */
    public Work {
      for (int v : new int[] {buildDays, dryDays, burnDays, refitDays, refitDryDays}) {
        if (v < 0) {
          throw new IllegalArgumentException("days of work must be zero or more, not " + v);
        }
      }
      int most = Math.max(buildPeople, Math.max(burnPeople, refitPeople));
      if (team < 1 || most > team || burnDays < 1) {
        throw new IllegalArgumentException("a team of " + team + " cannot do work that wants " + most
            + " people; ask for more hands, and give a burn at least a day");
      }
    }
  }

  /**
   * One piece of work.
   *
   * @param what "build", "dry", "burn" or "mend"
   * @param furnace the furnace
   * @param trial the place of the trial in the plan, −1 for other work
   * @param start the first day
   * @param length how many days from the first to the last, closed ones among them
   * @param people how many hands each day
   */
  public record Bar(String what, int furnace, int trial, int start, int length, int people) {
  }

  /**
   * The timetable of trials in the order given.
   *
   * @param furnaces the furnace of each trial, in order of burning
   */
  public static Timetable of(int[] furnaces, Work work) {
    return of(furnaces, work, day -> true);
  }

  /**
   * The timetable when work is done on some days only.
   *
   * @param furnaces the furnace of each trial, in order of burning
   * @param open whether work is done on a day; a season without any open day in ten years is taken as open
   */
  public static Timetable of(int[] furnaces, Work work, IntPredicate open) {
    return of(furnaces, IntStream.range(0, furnaces.length).toArray(), work, open);
  }

  /**
   * The timetable when trials next to each other share a day: they wait for each other as long as there are hands for all of them.
   *
   * @param days the day of each trial, by any numbers; equal ones next to each other are burnt together
   */
  public static Timetable of(int[] furnaces, int[] days, Work work, IntPredicate open) {
    return new Scheduler(work, open).run(furnaces, days);
  }

  /** Places one piece after the other. */
  private static final class Scheduler {
    private static final int HORIZON = 3660;
    private final Work work;
    private final IntPredicate open;
    private final List<Bar> bars = new ArrayList<>();
    private final List<Integer> load = new ArrayList<>();

    Scheduler(Work work, IntPredicate open) {
      this.work = work;
      this.open = day -> day > HORIZON || open.test(day);
    }

    Timetable run(int[] furnaces, int[] days) {
      int most = IntStream.of(furnaces).max().orElse(-1) + 1;
      int[] ready = new int[most];
      java.util.Arrays.fill(ready, -1);
      int last = 0;
      int end = 0;
      for (int t = 0; t < furnaces.length; t++) {
        // the order of the plan was drawn by lot and is kept
        int together = t == 0 || days[t] != days[t - 1] ? together(days, t) : 0;
        for (int k = t; k < t + together; k++) {
          ready[furnaces[k]] = prepare(furnaces[k], ready[furnaces[k]]);
          last = Math.max(last, together * work.burnPeople > work.team ? last : ready[furnaces[k]]);
        }
        if (together > 1 && together * work.burnPeople <= work.team) {
          last = freeFrom(last, work.burnDays, together * work.burnPeople);
        }
        int f = furnaces[t];
        Bar burn = place("burn", f, t, Math.max(ready[f], last), work.burnDays, work.burnPeople);
        last = burn.start;
        ready[f] = burn.start + burn.length;
        end = Math.max(end, ready[f]);
      }
      return new Timetable(List.copyOf(bars), load.stream().mapToInt(v -> v).toArray(),
          load.stream().mapToInt(v -> v).sum(), end);
    }

    private static int together(int[] days, int from) {
      int until = from + 1;
      while (until < days.length && days[until] == days[from]) {
        until++;
      }
      return until - from;
    }

    private int prepare(int f, int ready) {
      return ready < 0 ? prepare("build", f, 0, work.buildDays, work.buildPeople, work.dryDays)
          : prepare("mend", f, ready, work.refitDays, work.refitPeople, work.refitDryDays);
    }

    private int prepare(String what, int furnace, int from, int days, int people, int dry) {
      Bar bar = place(what, furnace, -1, from, days, people);
      if (dry > 0) {
        bars.add(new Bar("dry", furnace, -1, bar.start + bar.length, dry, 0));
      }
      return bar.start + bar.length + dry;
    }

    private Bar place(String what, int furnace, int trial, int from, int days, int people) {
      int start = freeFrom(from, days, people);
      int[] at = openDays(start, days);
      for (int d : at) {
        while (load.size() <= d) {
          load.add(0);
        }
        load.set(d, load.get(d) + people);
      }
      Bar bar = new Bar(what, furnace, trial, start, days == 0 ? 0 : at[days - 1] - start + 1, people);
      if (days > 0) {
        bars.add(bar);
      }
      return bar;
    }

    /** The first day from which so many hands are free for so many open days. */
    private int freeFrom(int from, int days, int people) {
      int start = from;
      int[] at = openDays(start, days);
      while (days > 0 && (at[0] != start || !free(at, people))) {
        start++;
        at = openDays(start, days);
      }
      return start;
    }

    /** The next so many days on which work is done. */
    private int[] openDays(int from, int days) {
      int[] found = new int[days];
      int day = from;
      for (int i = 0; i < days; i++) {
        while (!open.test(day)) {
          day++;
        }
        found[i] = day++;
      }
      return found;
    }

    private boolean free(int[] days, int people) {
      for (int d : days) {
        if (d < load.size() && load.get(d) + people > work.team) {
          return false;
        }
      }
      return true;
    }
  }
}
