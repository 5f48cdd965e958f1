package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudySnapshot;
import daubline.analysis.Target;
import daubline.base.Printed;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Ranking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Prints rankings for people. */
final class RanksText {

  private static final int SHOWN_RANKS = 4;
  private static final int SHOWN_PAIRS = 12;
  private static final int SHOWN_WEIGHTS = 4;

  private final StudySnapshot snapshot;
  private final Map<String, String> headings;
  private final Map<String, Double> usual;
  private final boolean pairs;
  private final boolean weights;

  RanksText(StudySnapshot snapshot, ComparisonOptions options, boolean pairs, boolean weights) {
    this.snapshot = snapshot;
    this.headings = options.targets(snapshot).stream().collect(Collectors.toMap(t -> t.sheet().id(), Target::heading, (a, b) -> a));
    this.usual = StudyRanking.usualWeights(options.settingsOf(snapshot));
    this.pairs = pairs;
    this.weights = weights;
  }

  void print(List<Ranking> rankings) {
    rankings.forEach(this::print);
    Page.say(0, "Ranks: share of draws in which a trial takes them, weights and measurements uncertain. Best weights: those that suit a trial best, and how "
        + "often it comes first under them. Share: part of the criterion in the difference between trials; the parts sum to 100 %, a negative one works "
        + "against the others. Left out: largest change of an agreement without it, and who comes first then.");
  }

  private void print(Ranking ranking) {
    Out.line("%s", headings.getOrDefault(ranking.sheet(), ranking.sheetName()));
    places(ranking);
    if (!ranking.untested().isEmpty()) {
      Page.say(2, ranking.untested().size() + " more could not be compared at all");
    }
    if (pairs) {
      pairs(ranking);
    }
    if (weights) {
      ranking.places().forEach(place -> weights(ranking, place));
    }
    recipes(ranking);
    criteria(ranking);
    Out.line("");
  }

  private static void places(Ranking ranking) {
    int ranks = Math.min(SHOWN_RANKS, ranking.places().size());
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of("trial", "agreement"));
    for (int r = 1; r <= ranks; r++) {
      head.add("rank " + r);
    }
    head.addAll(List.of("ahead of next", "first at best weights"));
    rows.add(head);
    for (Ranking.Place place : ranking.places()) {
      List<String> row = new ArrayList<>(List.of(Page.cut(place.trialName(), 24), Printed.fixed(place.agreement(), 0)));
      for (int r = 0; r < ranks; r++) {
        row.add(Page.percent(place.acceptability()[r]));
      }
      row.add(next(ranking, place));
      row.add(Double.isNaN(place.confidence()) ? "never" : Page.percent(place.confidence()));
      rows.add(row);
    }
    Page.table(2, 1, rows);
  }

  private static String next(Ranking ranking, Ranking.Place place) {
    return ranking.places().stream().filter(p -> p.rank() == place.rank() + 1).findFirst()
        .map(p -> Page.percent(place.wins().getOrDefault(p.trial(), Double.NaN))).orElse("–");
  }

  private static void pairs(Ranking ranking) {
    List<Ranking.Place> shown = ranking.places().stream().limit(SHOWN_PAIRS).toList();
    Page.say(2, "probability that the trial of the row agrees better than that of the column, numbered by rank"
        + (shown.size() < ranking.places().size() ? " (the first " + SHOWN_PAIRS + "; --json has all)" : ""));
    List<List<String>> rows = new ArrayList<>();
    List<String> head = new ArrayList<>(List.of(""));
    shown.forEach(p -> head.add(Integer.toString(p.rank())));
    rows.add(head);
    for (Ranking.Place row : shown) {
      List<String> cells = new ArrayList<>(List.of(row.rank() + " " + Page.cut(row.trialName(), 20)));
      shown.forEach(column -> cells.add(row == column ? "·" : Page.percent(row.wins().getOrDefault(column.trial(), Double.NaN))));
      rows.add(cells);
    }
    Page.table(4, 1, rows);
  }

  /** The tested criteria that count most for a trial when it comes first, beyond their usual weight. */
  private void weights(Ranking ranking, Ranking.Place place) {
    String text = StudyRanking.heavier(ranking, place, usual).stream().limit(SHOWN_WEIGHTS)
        .map(h -> h.criterion() + " " + weight(h.weight()) + " instead of " + weight(h.usual())).collect(Collectors.joining(", "));
    Page.hang(2, 4, place.trialName() + (place.centralWeights().isEmpty() ? " comes first under no weights that were drawn"
        : text.isEmpty() ? " comes first under any weights alike" : " comes first rather with: " + text));
  }

  private static String weight(double share) {
    return Printed.fixed(100 * share, 1) + "\u00A0%";
  }

  private void recipes(Ranking ranking) {
    Equifinality equal = StudyRanking.equallyGood(snapshot, ranking);
    String groups = equal.groups().size() < 2 ? "" : ": " + equal.groups().stream()
        .map(g -> g.stream().map(id -> snapshot.trial(id).map(t -> t.name()).orElse(id)).collect(Collectors.joining(" = "))).collect(Collectors.joining(" | "));
    Page.hang(2, 4, equal.sentence() + groups);
  }

  private static void criteria(Ranking ranking) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("criterion", "", "share", "left out: change", "first"));
    ranking.criteria().stream().filter(c -> !Double.isNaN(c.share()) && (c.share() != 0 || c.influence() != 0))
        .sorted(Comparator.comparingDouble((Ranking.Discrimination c) -> -Math.abs(c.share())).thenComparing(Ranking.Discrimination::criterion))
        .forEach(c -> rows.add(List.of(c.name(), c.tellsApart() ? "" : "cannot tell the trials apart", Page.percent(c.share()), Printed.fixed(c.influence(), 0),
            name(ranking, c.firstWithout()))));
    if (rows.size() > 1) {
      Page.table(2, 2, rows);
    }
  }

  private static String name(Ranking ranking, String trial) {
    return Page.cut(ranking.places().stream().filter(p -> p.trial().equals(trial)).map(Ranking.Place::trialName).findFirst().orElse("none"), 20);
  }
}
