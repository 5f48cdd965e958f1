package daubline.validation;

import daubline.base.Printed;
import daubline.charts.Axis;
import daubline.charts.Plot;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Verdict;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Whether the comparison finds a known recipe again as often as it says, over simulated smelts. */
final class Recovery implements Section {

  private static final int CASES = 600;
  private static final int RIVALS = 5;
  private static final int BINS = 5;
  private static final long SEED = 20_260_101;
  private static final ComparisonSettings SETTINGS = ComparisonSettings.standard().with(1000, SEED, 2);

  /** How often one kind of statement was made, and how often it held. */
  private static final class Tally {
    private double stated;
    private int held;
    private int all;

    void add(double probability, boolean holds) {
      stated += probability;
      held += holds ? 1 : 0;
      all++;
    }

    double share() {
      return (double) held / all;
    }

    /** An end of the 95 % interval of a share after Wilson 1927, Journal of the American Statistical Association 22, 209–212. */
    double end(int side) {
      double z = 1.96;
      double centre = share() + z * z / (2 * all);
      double half = z * Math.sqrt(share() * (1 - share()) / all + z * z / (4.0 * all * all));
      return (centre + side * half) / (1 + z * z / all);
    }
  }

  @Override
  public String title() {
    return "A known recipe among rivals";
  }

  @Override
  public void write(Page page) {
    page.text("Each of " + CASES + " cases invents " + RIVALS + " recipes that differ about as much as repeats of one scatter, the remains of a trial of each, and the evidence that one of them would have left: "
        + "six measures of the furnace, height, tapping, residue classes and one slag analysis. Trials scatter by the tolerance of each criterion and by "
        + "reading; of the evidence a third of the measures is missing, the wall is broken off, and oxides below 0.5 % are only limits. "
        + "Stated is the share of draws in which the trial ranked first takes the first rank; observed is how often it is the recipe that left the evidence.");
    ranks(page);
    repeats(page);
  }

  private static void ranks(Page page) {
    Tally[] bins = new Tally[BINS];
    Arrays.setAll(bins, b -> new Tally());
    Tally all = new Tally();
    RandomStream r = new RandomStream(RandomStream.key(SEED, "recovery"));
    for (int i = 0; i < CASES; i++) {
      List<SimulatedSmelt> smelts = new ArrayList<>();
      List<SheetData> trials = new ArrayList<>();
      for (int k = 0; k < RIVALS; k++) {
        smelts.add(SimulatedSmelt.draw(r));
        trials.add(smelts.get(k).repeated("case " + i + " trial " + k, r));
      }
      int right = r.below(RIVALS);
      Ranking ranking = new RankingEngine(Criteria.all(), SETTINGS).rank(trials, smelts.get(right).excavated("case " + i, r), Progress.NONE);
      Ranking.Place first = ranking.places().get(0);
      boolean holds = first.trial().equals(trials.get(right).id());
      bins[Math.min(BINS - 1, (int) (first.acceptability()[0] * BINS))].add(first.acceptability()[0], holds);
      all.add(first.acceptability()[0], holds);
    }
    List<List<String>> rows = new ArrayList<>();
    List<Plot.Point> points = new ArrayList<>();
    for (Tally bin : bins) {
      if (bin.all > 0) {
        points.add(Plot.Point.of(bin.stated / bin.all, bin.share(), bin.end(-1), bin.end(1), bin.all + " cases"));
        rows.add(row(bin, Integer.toString(bin.all)));
      }
    }
    rows.add(row(all, "all " + all.all));
    page.table(List.of("cases", "stated", "observed", "95 % interval"), rows);
    page.figure("recovery-of-recipes", Plot.of("How often the trial ranked first was the recipe that left the evidence, against the share of first ranks stated for "
        + "it. Bars: 95 % intervals.", Axis.around("stated", 0, 1), Axis.around("observed", 0, 1), List.of(new Plot.Series("cases by share stated", Plot.Style.MARKS, points)))
        .withDiagonal());
    page.text("Points above the diagonal mean that the shares are stated too modestly, points below that they promise too much. The shares also hold the "
        + "uncertainty of the weights, which no recipe has, so a modest statement is to be expected.");
  }

  private static List<String> row(Tally t, String cases) {
    return List.of(cases, Printed.fixed(t.stated / t.all, 2), Printed.fixed(t.share(), 2), Printed.fixed(t.end(-1), 2) + "–" + Printed.fixed(t.end(1), 2));
  }

  private static void repeats(Page page) {
    RandomStream r = new RandomStream(RandomStream.key(SEED, "repeats"));
    Map<String, Tally> verdicts = new TreeMap<>();
    Tally band = new Tally();
    Tally above = new Tally();
    Tally ruledOut = new Tally();
    for (int i = 0; i < CASES; i++) {
      SimulatedSmelt smelt = SimulatedSmelt.draw(r);
      Comparison c = ComparisonEngine.compare(List.of(smelt.repeated("repeat " + i, r)), List.of(smelt.excavated("dig " + i, r)), Criteria.all(), SETTINGS).get(0);
      band.add(0.9, c.agreement() >= c.bandLow() && c.agreement() <= c.bandHigh());
      above.add(0.05, c.agreement() > c.bandHigh());
      ruledOut.add(0.05, Exclusion.of(c, 0.05).isRuledOut());
      for (CriterionResult result : c.criteria()) {
        if (result.isTested()) {
          verdicts.computeIfAbsent(result.name(), n -> new Tally()).add(0.05, result.verdict() == Verdict.NOT_CONSISTENT);
        }
      }
    }
    page.part("What is said of faithful repeats");
    page.text("The same smelt is repeated and dug up " + CASES + " times.");
    List<List<String>> rows = new ArrayList<>();
    rows.add(statement("the agreement lies in the 5–95 % band of a faithful repeat", "0.90", band));
    rows.add(statement("the agreement lies above the band", "0.05", above));
    rows.add(statement("the trial is ruled out", "below 0.05", ruledOut));
    verdicts.forEach((name, tally) -> rows.add(statement("“not consistent” by " + name, "0.05 or less", tally)));
    page.table(List.of("statement", "should hold", "held", "of"), rows);
  }

  private static List<String> statement(String what, String should, Tally tally) {
    return List.of(what, should, Printed.fixed(tally.share(), 3), Integer.toString(tally.all));
  }
}
