package daubline.cli;

import daubline.analysis.design.Proposal;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.engine.design.Design;
import daubline.engine.design.advise.DesignAdvisor;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.stock.Timetable;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Prints designs for people. */
final class DesignText {

  private static final int ALIASES = 12;

  private DesignText() {
  }

  static void print(Proposal proposal) {
    Out.line("%s: %s", proposal.brief().series().name(), proposal.brief().question().word());
    proposal.brief().rules().forEach(r -> Out.line("  %s", r.text(proposal.brief().factors())));
    Out.line("");
    Out.line("Recommended: %s", proposal.advice().recommended().name());
    proposal.advice().reasons().forEach(r -> Out.line("  %s", r));
    proposal.advice().recommended().design().notes().forEach(n -> Out.line("  %s", n));
    Out.line("");
    Out.line("Beside it");
    for (DesignAdvisor.Option option : proposal.advice().rejected()) {
      Out.line("  %-24s %s", option.name(), option.verdict());
    }
    if (proposal.chosen() != proposal.advice().recommended()) {
      Out.line("");
      Out.line("Taken instead: %s", proposal.chosen().name());
    }
    Out.line("");
    if (!proposal.done().isEmpty()) {
      Out.line("Together with the %d trials burnt already (--leave-burnt begins without them):", proposal.done().size());
    }
    print(proposal.whole(), proposal.review());
    Out.line("");
    order(proposal);
    List<Finding> reviewed = proposal.chosen().review().findings();
    proposal.findings().stream().filter(f -> !reviewed.contains(f)).forEach(f -> Out.line("%s", f));
  }

  static void order(Proposal proposal) {
    Out.line("In random order (seed %d, %s, version %s)", proposal.plan().seed(), proposal.plan().algorithm(), proposal.plan().version());
    if (!proposal.plan().restriction().isEmpty()) {
      Out.line("  %s", proposal.plan().restriction());
    }
    Design design = proposal.plan().design();
    for (int i = 0; i < design.size(); i++) {
      int place = i;
      Optional<Timetable.Bar> burn = proposal.timetable().bars().stream().filter(b -> b.trial() == place).findFirst();
      String when = burn.map(b -> proposal.season().calendar().map(c -> c.date(b.start()).toString()).orElse("day " + (b.start() + 1))).orElse("");
      Out.line("  %3d  furnace %-3d %-11s %s", i + 1, design.runs().get(i).furnace() + 1, when, design.text(i));
    }
    Out.line("  %d days of work of one person in all", proposal.timetable().personDays());
  }

  static void print(Design design, DesignReview review) {
    Out.line("What %d trials in %d furnaces can show (in standard deviations between trials)", design.size(), design.furnaceCount());
    Out.line("  %-38s %-9s %4s %9s  %s", "", "judged by", "df", "error", "smallest seen four times in five");
    for (DesignReview.EffectReview e : review.effects()) {
      Out.line("  %-38s %-9s %4d %9s  %s", e.name(), e.stratum(), e.freedom(), e.estimable() ? Printed.number(e.standardError(), 3) : "–",
          e.estimable() ? Double.isInfinite(e.smallest()) ? "no error left to judge it by" : Printed.number(e.smallest(), 3) : "cannot be told apart");
    }
    Out.line("  prediction variance: average %s, median %s, nine in ten below %s, worst %s", Printed.number(review.prediction().average(), 3),
        Printed.number(review.prediction().median(), 3), Printed.number(review.prediction().ninety(), 3), Printed.number(review.prediction().worst(), 3));
    List<DesignReview.Alias> aliases = review.aliases().stream().sorted(Comparator.comparingDouble(a -> -Math.abs(a.share()))).toList();
    aliases.stream().limit(ALIASES).forEach(a -> Out.line("  the estimate of %s takes up %s of %s", a.column(), Printed.number(a.share(), 2), a.interaction()));
    if (aliases.size() > ALIASES) {
      Out.line("  and %d more of that kind", aliases.size() - ALIASES);
    }
    for (DesignReview.LostRun lost : review.lost()) {
      Out.line("  without trial %d: %s; it decides %s %% of its own prediction", lost.trial() + 1, lost.lost().isEmpty() ? "intervals up to "
          + Printed.number(lost.widening(), 3) + " times as wide" + (lost.worst().isEmpty() ? "" : " (" + lost.worst() + ")")
          : "nothing could be said of " + String.join(", ", lost.lost()), Printed.fixed(100 * review.leverage()[lost.trial()], 0));
    }
    review.findings().forEach(f -> Out.line("  %s", f));
  }
}
