package daubline.ui.plan;

import daubline.analysis.EntryOrigins;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.model.Factor;
import daubline.model.ForbiddenCombination;
import daubline.model.FrozenPlan;
import daubline.model.Provision;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;

/** What the numbers of a plan are worked out of: the factors, stocks, people and days of a series, and its frozen plans. */
record PlanOrigins(OpenStudy study, Series series) {

  /** Everything that the series is planned with, each leading to its entry. */
  List<Trail> all() {
    EntryOrigins entries = new EntryOrigins(study.session());
    List<Trail> all = new ArrayList<>();
    for (Factor f : series.getFactors()) {
      all.add(entries.of(f, text(f.getVariable()), text(f.getLevels())));
    }
    for (ForbiddenCombination f : series.getForbidden()) {
      all.add(entries.of(f, Words.of("plan.never"), text(f.getConditions())));
    }
    for (Provision p : series.getProvisions()) {
      all.add(entries.of(p, Words.of("plan.stock", text(p.getName())), p.getAvailable() == null ? "" : Printed.number(p.getAvailable()) + " " + text(p.getUnit())));
    }
    if (series.getLabour() != null) {
      all.add(entries.of(series.getLabour(), Words.of("plan.labour"), ""));
    }
    for (FrozenPlan plan : series.getPlans()) {
      all.add(entries.of(plan, Words.of("page.plan"), text(plan.getName())));
    }
    all.add(entries.of(series, OpenStudy.nameOf(series), ""));
    return all;
  }

  /** A row of a table of the plan, which says in words what it was worked out of. */
  Trail row(List<String> line) {
    return Trail.reckoned(line.get(0), "", String.join(" – ", line.stream().filter(t -> !t.isEmpty()).toList()), all());
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
