package daubline.engine.design.stock;

import daubline.base.Finding;
import daubline.base.Printed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * How many trials stock, hands, days and permissions allow.
 *
 * @param trials the most possible
 * @param furnaces how many furnaces they take
 * @param limits every constraint with the trials it alone would allow, the tightest first
 * @param expected the trials likely to succeed, on average
 * @param assured the trials that succeed with the wanted assurance
 * @param findings the binding constraint, the next one and the failed trials, in words
 */
public record Capacity(int trials, int furnaces, List<Limit> limits, double expected, int assured, List<Finding> findings) {

  /** A season without an end: days set no limit. */
  public static final int NO_END = Integer.MAX_VALUE;
  private static final int MOST = 500;

  /**
   * A ceiling that no stock stands behind, such as burns that a permission allows.
   *
   * @param name what it is
   * @param trials the most trials
   */
  public record Ceiling(String name, int trials) {
  }

  /**
   * A term within which alone work is allowed, such as that of a permission.
   *
   * @param name what it is
   * @param first its first day of the season, from 0
   * @param last its last day
   */
  public record Term(String name, int first, int last) {
  }

  /**
   * What is at hand.
   *
   * @param stocks what trials use up
   * @param firings how often one furnace can be burnt, 1 or more
   * @param work the hands and days that builds and burns take
   * @param days the days of the season, {@link #NO_END} when they set no limit
   * @param open whether work is done on a day of the season, counted from 0
   * @param terms permissions and the like that shorten the season
   * @param ceilings other limits
   * @param failure the share of trials that fail, 0 to below 1
   * @param assurance how sure the number of successful trials must be, such as 0.9
   */
  public record Request(List<Stock> stocks, int firings, Timetable.Work work, int days, IntPredicate open, List<Term> terms,
      List<Ceiling> ceilings, double failure, double assurance) {

    /** A season in which every day is a working day. */
    public Request(List<Stock> stocks, int firings, Timetable.Work work, int days, List<Ceiling> ceilings, double failure, double assurance) {
      this(stocks, firings, work, days, day -> true, List.of(), ceilings, failure, assurance);
    }

    public Request {
      stocks = List.copyOf(stocks);
      terms = List.copyOf(terms);
      ceilings = List.copyOf(ceilings);
      if (firings < 1 || days < 0 || !(failure >= 0 && failure < 1) || !(assurance > 0 && assurance < 1)) {
        throw new IllegalArgumentException("give one firing or more for each furnace, days of zero or more, and shares between "
            + "0 and 1 for failure and assurance");
      }
    }
  }

  /**
   * One constraint.
   *
   * @param name what it is
   * @param trials the trials it alone would allow
   * @param text why, in words
   */
  public record Limit(String name, int trials, String text) {
  }

  /** The capacity. */
  public static Capacity of(Request request) {
    List<Limit> limits = new ArrayList<>();
    for (Stock stock : request.stocks) {
      int most = most(n -> stock.needed(n, furnaces(n, request.firings)) <= stock.usable() * (1 + 1e-12));
      limits.add(new Limit(stock.name(), most, Printed.number(stock.delivered()) + " " + stock.unit() + " delivered, "
          + Printed.number(stock.usable(), 3) + " usable, " + Printed.number(stock.needed(1, 1), 3) + " for the first trial"));
    }
    if (request.days < NO_END) {
      limits.add(new Limit("days", within(request, 0, request.days - 1), openDays(request, 0, request.days - 1) + " working days for a team of "
          + request.work.team()));
    }
    for (Term term : request.terms) {
      int last = Math.min(term.last, request.days - 1);
      limits.add(new Limit(term.name, within(request, term.first, last), openDays(request, term.first, last) + " working days within its term"));
    }
    for (Ceiling ceiling : request.ceilings) {
      limits.add(new Limit(ceiling.name, Math.max(0, ceiling.trials), "at most " + ceiling.trials));
    }
    if (limits.isEmpty()) {
      limits.add(new Limit("nothing stated", MOST, "neither stock nor season is stated"));
    }
    limits.sort(Comparator.comparingInt(Limit::trials));
    int trials = limits.get(0).trials;
    return new Capacity(trials, furnaces(trials, request.firings), List.copyOf(limits), trials * (1 - request.failure),
        assured(trials, request.failure, request.assurance), findings(limits, request));
  }

  /** The most trials that can be burnt from one day to another. */
  private static int within(Request request, int first, int last) {
    return last < first ? 0 : most(n -> Timetable.of(order(n, request.firings), request.work, d -> d > last || d >= first && request.open.test(d)).days()
        <= last + 1);
  }

  private static long openDays(Request request, int first, int last) {
    return IntStream.rangeClosed(Math.max(0, first), last).filter(request.open).count();
  }

  private static int most(IntPredicate possible) {
    int n = 0;
    while (n < MOST && possible.test(n + 1)) {
      n++;
    }
    return n;
  }

  private static int furnaces(int trials, int firings) {
    return (trials + firings - 1) / firings;
  }

  /** Furnaces side by side rather than one after the other, so that one dries while another burns. */
  static int[] order(int trials, int firings) {
    int furnaces = furnaces(trials, firings);
    return IntStream.range(0, trials).map(i -> i % furnaces).toArray();
  }

  /** The largest number of successes that so many trials reach with the assurance. */
  static int assured(int trials, double failure, double assurance) {
    double chance = 0;
    for (int m = trials; m >= 0; m--) {
      chance += binomial(trials, m) * Math.pow(1 - failure, m) * Math.pow(failure, trials - m);
      if (chance >= assurance - 1e-12) {
        return m;
      }
    }
    return 0;
  }

  private static double binomial(int n, int k) {
    double c = 1;
    for (int i = 1; i <= Math.min(k, n - k); i++) {
      c = c * (n - i + 1) / i;
    }
    return c;
  }

  /** The next constraint: the tightest one that allows more than the binding one. */
  public Optional<Limit> next() {
    return limits.stream().filter(l -> l.trials > trials).findFirst();
  }

  /** The constraints that bind, more than one when they tie. */
  public List<Limit> binding() {
    return limits.stream().filter(l -> l.trials == trials).toList();
  }

  private static List<Finding> findings(List<Limit> limits, Request request) {
    int trials = limits.get(0).trials;
    List<Finding> found = new ArrayList<>();
    String binding = String.join(" and ", limits.stream().filter(l -> l.trials == trials).map(l -> l.name + " (" + l.text + ")").toList());
    String next = limits.stream().filter(l -> l.trials > trials).findFirst()
        .map(l -> "with more of it " + l.name + " would stop you at " + count(l.trials)).orElse("nothing else given would stop you soon");
    found.add(trials == 0 ? Finding.error("capacity.none", "stock and labour", "not even one trial: short of " + binding, next)
        : Finding.note("capacity.binding", "stock and labour", "at most " + count(trials) + ", because of " + binding, next));
    if (request.failure > 0 && trials > 0) {
      int assured = assured(trials, request.failure, request.assurance);
      found.add(Finding.note("capacity.failures", "stock and labour", "if one trial in " + Printed.number(1 / request.failure, 2)
          + " fails, at least " + assured + " of " + trials + " succeed with " + Printed.number(100 * request.assurance, 3) + " % assurance",
          "plan the design for " + assured + " and keep the rest as spares"));
    }
    return found;
  }

  private static String count(int trials) {
    return trials >= MOST ? MOST + " trials or more" : trials + (trials == 1 ? " trial" : " trials");
  }
}
