package daubline.analysis.design;

import daubline.analysis.record.PlanningData;
import daubline.analysis.record.PlanningData.LabourData;
import daubline.analysis.record.PlanningData.ProvisionData;
import daubline.analysis.record.SeriesData;
import daubline.base.Finding;
import daubline.base.MoistureBasis;
import daubline.engine.design.search.Budget;
import daubline.engine.design.stock.Capacity;
import daubline.engine.design.stock.Stock;
import daubline.engine.design.stock.Timetable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What a season affords: stock, hands and days of a series.
 *
 * @param request what is at hand
 * @param capacity how many trials that allows
 * @param calendar the days; empty when they were not stated
 * @param findings what is missing or was taken as usual
 */
public record Season(Capacity.Request request, Capacity capacity, Optional<Calendar> calendar, List<Finding> findings) {

  private static final Pattern LOSS = Pattern.compile("(.*?)\\s*(\\d+(?:[.,]\\d+)?)\\s*%");

  /** The season of a series; what was not stated is taken as usual and said. */
  public static Season of(SeriesData series) {
    return new Reader(series).read();
  }

  /** Whether anything was stated that limits the trials. */
  public boolean isStated() {
    return !request.stocks().isEmpty() || calendar.isPresent();
  }

  /** What may be spent on so many trials at most. */
  public Budget budget(int most) {
    return new Budget(Math.max(1, most), request.firings(), this::affords);
  }

  private boolean affords(int furnaces, int trials) {
    boolean stocked = request.stocks().stream().allMatch(s -> s.needed(trials, furnaces) <= s.usable() * (1 + 1e-12));
    int last = request.terms().stream().mapToInt(Capacity.Term::last).min().orElse(request.days() - 1);
    return stocked && (calendar.isEmpty() || timetable(IntStream.range(0, trials).map(i -> i % furnaces).toArray()).days() <= Math.min(last + 1, request.days()));
  }

  /** When the trials of these furnaces, in order, are built and burnt. */
  public Timetable timetable(int[] furnaces) {
    return timetable(furnaces, IntStream.range(0, furnaces.length).toArray());
  }

  /** The same when trials next to each other share a day: equal numbers of a day. */
  public Timetable timetable(int[] furnaces, int[] days) {
    int first = request.terms().stream().mapToInt(Capacity.Term::first).max().orElse(0);
    return Timetable.of(furnaces, days, request.work(), d -> d >= first && request.open().test(d));
  }

  /** Reads one series. */
  private static final class Reader {
    private final SeriesData series;
    private final PlanningData planning;
    private final List<Finding> findings = new ArrayList<>();

    Reader(SeriesData series) {
      this.series = series;
      planning = series.planning();
    }

    Season read() {
      List<Stock> stocks = planning.provisions().stream().flatMap(p -> stock(p).stream()).toList();
      Optional<LabourData> labour = planning.labour();
      if (stocks.isEmpty()) {
        note("season.no-stock", "no stock is stated, so it sets no limit", "say what ore, charcoal and clay there is and what a trial takes");
      }
      Optional<Calendar> calendar = labour.flatMap(this::calendar);
      int days = calendar.map(Calendar::days).orElse(Capacity.NO_END);
      IntPredicate open = calendar.<IntPredicate>map(c -> d -> d >= c.days() || c.isOpen(d)).orElse(d -> true);
      double failure = share(labour.map(LabourData::failureShare).orElse(Double.NaN), 0, "failed trials");
      double assurance = share(labour.map(LabourData::assurance).orElse(Double.NaN), 0.9, "the assurance");
      Capacity.Request request = new Capacity.Request(stocks, Math.max(1, labour.map(LabourData::firings).filter(f -> f > 0).orElse(2)), work(labour),
          days, open, terms(labour, calendar), List.of(), failure, assurance > 0 ? assurance : 0.9);
      Capacity capacity = Capacity.of(request);
      findings.addAll(capacity.findings().stream().filter(f -> !f.code().equals("capacity.binding") || !stocks.isEmpty() || calendar.isPresent()).toList());
      return new Season(request, capacity, calendar, List.copyOf(findings));
    }

    private void note(String code, String what, String remedy) {
      findings.add(Finding.note(code, series.name(), what, remedy));
    }

    private void wrong(String where, String what, String remedy) {
      findings.add(Finding.error("season.wrong", where, what, remedy));
    }

    private Optional<Stock> stock(ProvisionData p) {
      double there = Double.isNaN(p.available()) ? p.inLots() : p.available();
      if (Double.isNaN(there)) {
        wrong(p.name(), "it is not stated how much there is", "give the amount, or the lots it stands in with their weighed treatments");
        return Optional.empty();
      }
      if (!(p.perTrial() > 0 || p.perFurnace() > 0 || p.perRefit() > 0)) {
        findings.add(Finding.warning("season.unused", p.name(), "nothing is said to use it up, so it sets no limit", "say what a trial, a furnace or a refit takes"));
      }
      try {
        return Optional.of(new Stock(p.name(), p.unit().isEmpty() ? "kg" : p.unit(), there, zero(p.moisture()),
            p.dryBasis() ? MoistureBasis.DRY : MoistureBasis.WET, losses(p), zero(p.reserve()), zero(p.once()), zero(p.perTrial()),
            zero(p.perFurnace()), zero(p.perRefit())));
      } catch (IllegalArgumentException e) {
        wrong(p.name(), e.getMessage(), "mend the number");
        return Optional.empty();
      }
    }

    private List<Stock.Loss> losses(ProvisionData p) {
      List<Stock.Loss> losses = new ArrayList<>();
      for (String part : FactorReader.list(p.losses())) {
        Matcher m = LOSS.matcher(part);
        if (m.matches()) {
          losses.add(new Stock.Loss(m.group(1).isBlank() ? "on the way" : m.group(1), Double.parseDouble(m.group(2).replace(',', '.')) / 100));
        } else {
          wrong(p.name(), "the loss “" + part + "” is not a name and a share", "write it like “roasting 14 %; sieving 8 %”");
        }
      }
      return losses;
    }

    private static double zero(double value) {
      return Double.isNaN(value) ? 0 : value;
    }

    private double share(double stated, double otherwise, String what) {
      if (!Double.isNaN(stated) && !(stated >= 0 && stated < 1)) {
        wrong(series.name(), "the share of " + what + " is " + stated, "give a share from 0 to below 1");
        return otherwise;
      }
      return Double.isNaN(stated) ? otherwise : stated;
    }

    private Optional<Calendar> calendar(LabourData l) {
      if (l.firstDay().isBlank() || l.lastDay().isBlank()) {
        note("season.no-days", "the first or the last day of the season is not stated, so days set no limit", "give both as dates, such as 2031-05-10");
        return Optional.empty();
      }
      try {
        return Optional.of(Calendar.of(l.firstDay(), l.lastDay(), l.weekdays(), l.daysOff()));
      } catch (IllegalArgumentException e) {
        wrong(series.name(), e.getMessage(), "write dates as 2031-05-10 and weekdays as Saturday; Sunday");
        return Optional.empty();
      }
    }

    /** Usual times and hands of a clay furnace where nothing is stated (common practice, no source). */
    private Timetable.Work work(Optional<LabourData> labour) {
      int people = labour.map(l -> l.team() >= 0 ? l.team() : l.people()).orElse(0);
      int team = people > 0 ? people : 4;
      int build = Math.min(team, stated(labour, LabourData::buildPeople, 2));
      int burn = stated(labour, LabourData::burnPeople, Math.min(team, 4));
      int refit = Math.min(team, stated(labour, LabourData::refitPeople, 1));
      if (burn > team) {
        wrong(series.name(), "a burn wants " + burn + " people, the team has " + team, "ask for more hands, or plan a burn with fewer");
        burn = team;
      }
      return new Timetable.Work(team, stated(labour, LabourData::buildDays, 2), build, stated(labour, LabourData::dryDays, 14),
          Math.max(1, stated(labour, LabourData::burnDays, 1)), burn, stated(labour, LabourData::refitDays, 1), refit, stated(labour, LabourData::refitDryDays, 2));
    }

    private static int stated(Optional<LabourData> labour, java.util.function.ToIntFunction<LabourData> of, int usual) {
      return labour.map(of::applyAsInt).filter(v -> v >= 0).orElse(usual);
    }

    private List<Capacity.Term> terms(Optional<LabourData> labour, Optional<Calendar> calendar) {
      if (labour.isEmpty() || calendar.isEmpty()) {
        return List.of();
      }
      return labour.get().permissions().stream().map(p -> {
        int from = Calendar.date(p.from()).map(calendar.get()::day).orElse(0);
        int until = Calendar.date(p.until()).map(calendar.get()::day).orElse(calendar.get().days() - 1);
        return new Capacity.Term(p.name(), Math.max(0, from), until);
      }).toList();
    }
  }
}
