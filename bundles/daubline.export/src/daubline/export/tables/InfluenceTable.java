package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Ranking;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What each criterion does to the order of the trials, and what leaving it out would do. */
public final class InfluenceTable extends Spec {

  /** The table. */
  public InfluenceTable() {
    super("influence", "What Each Criterion Decides", "Part of each criterion in the difference between trials, and what leaving it out would change.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("sheet", "Evidence sheet"), Column.words("criterion", "Criterion"), Column.number("share", "Share", "%"),
        Column.words("tells", "Tells trials apart"), Column.number("change", "Largest change left out", "points"), Column.text("first", "First when left out"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Ranking ranking : RankedTrials.of(results)) {
      ranking.criteria().stream().filter(c -> !Double.isNaN(c.share()) && (c.share() != 0 || c.influence() != 0))
          .sorted(Comparator.comparingDouble((Ranking.Discrimination c) -> -Math.abs(c.share())).thenComparing(Ranking.Discrimination::criterion))
          .forEach(c -> rows.add(List.of(Cell.text(ranking.sheetName()), Cell.text(c.name()), Cell.fixed(100 * c.share(), 0),
              Cell.text(c.tellsApart() ? "yes" : "cannot tell them apart"), Cell.fixed(c.influence(), 0), Cell.text(name(ranking, c.firstWithout())))));
    }
    return rows;
  }

  private static String name(Ranking ranking, String trial) {
    return ranking.places().stream().filter(p -> p.trial().equals(trial)).map(Ranking.Place::trialName).findFirst().orElse("");
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("The shares of one sheet sum to 100 %; a negative one works against the others.",
        "A criterion cannot tell trials apart when they differ by less than each of them is uncertain.", RankedTrials.note(results));
  }
}
