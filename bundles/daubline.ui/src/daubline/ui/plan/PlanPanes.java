package daubline.ui.plan;

import daubline.analysis.StudySnapshot;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Deviation;
import daubline.analysis.design.FrozenDesign;
import daubline.analysis.design.Proposal;
import daubline.analysis.design.Season;
import daubline.analysis.record.PlanningData.FrozenData;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.charts.CorrelationFigure;
import daubline.charts.TimetableFigure;
import daubline.engine.design.Design;
import daubline.engine.design.advise.DesignAdvisor;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.stock.Capacity;
import daubline.engine.design.stock.Timetable;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Hue;
import daubline.ui.look.PageBook;
import daubline.ui.look.Pages;
import daubline.ui.prefs.Preferred;
import daubline.ui.views.FigurePane;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What the stock allows, the designs beside each other, the order of burning, the review and what was done otherwise. */
final class PlanPanes {

  /** As many mixed estimates as are worth reading; the map shows all. */
  private static final int ALIASES = 12;

  private final PageBook book;
  private final LinesModel limits = new LinesModel(new String[] {"plan.limit", "plan.trials", "plan.why"}, 1.2, 0.6, 2.4);
  private final LinesModel designs = new LinesModel(new String[] {"plan.design", "plan.verdict"}, 1, 3);
  private final LinesModel order = new LinesModel(new String[] {"plan.place", "plan.furnace.number", "plan.date", "plan.settings"}, 0.5, 0.6, 0.9, 3);
  private final LinesModel review = new LinesModel(new String[] {"plan.effect", "plan.judged", "plan.freedom", "plan.smallest"}, 1.6, 0.6, 0.6, 2.4);
  private final LinesModel deviations = new LinesModel(new String[] {"plan.trial.name", "plan.what", "plan.planned", "plan.done", "plan.because"}, 1, 1, 1, 1.2, 1.4);
  private final List<Grid> grids = new ArrayList<>();
  private final Grid choice;
  private final FigurePane timetable;
  private final FigurePane map;
  private final Prose reasons;
  private final Prose seed;
  private final Prose seen;

  PlanPanes(Composite parent, PlanOrigins origins) {
    List.of(limits, designs, order, review, deviations).forEach(m -> m.from(origins::row));
    book = new PageBook(parent, SWT.TOP);
    SashForm allows = new SashForm(book.body(), SWT.VERTICAL);
    grid(allows, "plan.allows", limits);
    timetable = new FigurePane(allows).rest(origins::all);
    allows.setWeights(4, 5);
    tab("plan.allows", allows);
    reasons = labelled("plan.proposal", designs);
    choice = grids.get(grids.size() - 1);
    seed = labelled("plan.order", order);
    seen = labelled("plan.review", review);
    map = new FigurePane(book.body()).rest(origins::all);
    tab("plan.map", map.control());
    Composite otherwise = Pages.tight(book.body(), 1);
    grid(otherwise, "plan.otherwise", deviations);
    tab("plan.otherwise", otherwise);
  }

  private Prose labelled(String key, LinesModel model) {
    SashForm page = new SashForm(book.body(), SWT.VERTICAL);
    page.setBackground(Hue.ASH.color());
    Prose prose = new Prose(page, key + ".prose");
    grid(page, key, model);
    page.setWeights(2, 3);
    tab(key, page);
    return prose;
  }

  private void grid(Composite parent, String key, LinesModel model) {
    Grid grid = new Grid(parent, Words.of(key), model);
    grid.control().setData("id", key);
    if (!(parent instanceof SashForm)) {
      grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    }
    grids.add(grid);
  }

  private void tab(String key, Control control) {
    book.add(key, Words.of(key), control);
  }

  /** The design marked in the proposal; empty when none is. */
  Optional<String> marked() {
    return choice.selected().filter(at -> at.y < designs.rows()).map(at -> designs.item(at.y).get(0));
  }

  /** Tells when another design is marked. */
  void onMark(Runnable listener) {
    choice.onSelect(listener);
  }

  void turnToProposal() {
    book.show("plan.proposal");
  }

  void turnToOrder() {
    book.show("plan.order");
  }

  /** Shows everything; the frozen plan where there is one and nothing new was proposed. */
  void show(StudySnapshot study, DesignBrief brief, Season season, Proposal proposal) {
    limits(season);
    Optional<FrozenData> frozen = FrozenDesign.last(brief);
    if (proposal != null) {
      proposed(proposal);
    } else {
      frozen(study, brief, frozen);
    }
    deviations.show(Deviation.of(study, brief.series()).stream().map(d -> List.of(d.trial(), d.what(), d.planned(), d.done(), d.because())).toList());
    grids.forEach(Grid::rebuild);
  }

  private void limits(Season season) {
    Capacity c = season.capacity();
    limits.show(season.isStated() ? c.limits().stream().map(l -> List.of(l.name(), l.trials() >= 500 ? "–" : Integer.toString(l.trials()), l.text())).toList() : List.of());
    timetable.show(season.isStated() && c.trials() > 0 && c.trials() < 100 ? new TimetableFigure(season.timetable(IntStream.range(0, c.trials()).map(i -> i % c.furnaces()).toArray()),
        season.calendar()) : null, Words.of("plan.no.timetable"));
  }

  private void proposed(Proposal proposal) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of(proposal.advice().recommended().name(), taken(proposal, proposal.advice().recommended()) + Words.of("plan.recommended")));
    for (DesignAdvisor.Option option : proposal.advice().rejected()) {
      lines.add(List.of(option.name(), taken(proposal, option) + option.verdict()));
    }
    designs.show(lines);
    String never = String.join("\n", proposal.brief().rules().stream().map(r -> r.text(proposal.brief().factors())).toList());
    reasons.show(String.join(" ", proposal.advice().reasons()) + (never.isEmpty() ? "" : "\n" + never));
    seed.show(Words.of("plan.seed", Long.toString(proposal.plan().seed()), proposal.plan().algorithm(), proposal.plan().version()) + " " + proposal.plan().restriction());
    order(proposal.plan().design(), Optional.of(proposal.timetable()), proposal.season());
    review(proposal.plan().design(), proposal.review());
  }

  /** Says which design is shown when it is not the one recommended. */
  private static String taken(Proposal proposal, DesignAdvisor.Option option) {
    return option == proposal.chosen() && option != proposal.advice().recommended() ? Words.of("plan.taken") + " – " : "";
  }

  private void frozen(StudySnapshot study, DesignBrief brief, Optional<FrozenData> frozen) {
    designs.show(List.of());
    reasons.show(frozen.map(f -> Words.of("plan.frozen.at", f.name(), f.frozenAt()) + " " + f.reasons()).orElse(Words.of("plan.nothing.proposed")));
    seed.show(frozen.map(f -> Words.of("plan.seed", f.seed(), f.algorithm(), f.version()) + " " + f.restriction()).orElse(Words.of("plan.nothing.proposed")));
    order.show(List.of());
    review.show(List.of());
    seen.show(Words.of("plan.nothing.proposed"));
    map.show(null, Words.of("plan.nothing.proposed"));
    if (frozen.isPresent() && brief.isReady()) {
      try {
        Design design = FrozenDesign.of(study, brief).orElseThrow();
        order(study, design, frozen.get());
        review(design, DesignReview.of(design, DesignBrief.question(frozen.get().aim()).orElse(brief.question()).model(brief.factors()), brief.space(), FrozenDesign.strata(frozen.get())));
      } catch (IllegalArgumentException e) {
        seen.show(e.getMessage());
      }
    }
  }

  private void order(StudySnapshot study, Design design, FrozenData plan) {
    order.show(IntStream.range(0, design.size()).mapToObj(i -> List.of(Integer.toString(i + 1), Integer.toString(design.runs().get(i).furnace() + 1),
        study.record().trial(plan.runs().get(i).trial()).map(t -> Preferred.dates().show(t.on())).orElse(""), design.text(i))).toList());
  }

  private void order(Design design, Optional<Timetable> table, Season season) {
    order.show(IntStream.range(0, design.size()).mapToObj(i -> List.of(Integer.toString(i + 1), Integer.toString(design.runs().get(i).furnace() + 1),
        table.flatMap(t -> t.bars().stream().filter(b -> b.trial() == i).findFirst()).flatMap(b -> season.calendar().map(c -> Preferred.dates().show(c.date(b.start()).toString()))).orElse(""),
        design.text(i))).toList());
  }

  private void review(Design design, DesignReview now) {
    List<List<String>> lines = new ArrayList<>();
    for (DesignReview.EffectReview e : now.effects()) {
      lines.add(List.of(e.name(), e.stratum(), Integer.toString(e.freedom()), !e.estimable() ? Words.of("plan.not.apart") : Double.isInfinite(e.smallest())
          ? Words.of("plan.no.error") : Printed.number(e.smallest(), 3)));
    }
    for (DesignReview.LostRun lost : now.lost()) {
      String costs = lost.lost().isEmpty() ? Words.of("plan.wider", Printed.number(lost.widening(), 3)) : Words.of("plan.lost", String.join(", ", lost.lost()));
      lines.add(List.of(Words.of("plan.without", lost.trial() + 1), "", "", Words.of("plan.decides", costs, Printed.fixed(100 * now.leverage()[lost.trial()], 0))));
    }
    now.aliases().stream().sorted(Comparator.comparingDouble(a -> -Math.abs(a.share()))).limit(ALIASES)
        .forEach(a -> lines.add(List.of(Words.of("plan.takes", a.column()), "", "", Words.of("plan.share", Printed.number(a.share(), 2), a.interaction()))));
    review.show(lines);
    DesignReview.Prediction p = now.prediction();
    String predicts = Double.isInfinite(p.average()) ? "" : Words.of("plan.predicts", Printed.number(p.average(), 3), Printed.number(p.ninety(), 3), Printed.number(p.worst(), 3));
    seen.show(String.join(" ", now.findings().stream().map((Finding f) -> Words.said(f.what()) + ".").toList()) + (predicts.isEmpty() ? "" : "\n" + predicts));
    map.show(new CorrelationFigure(now.correlations()), "");
  }
}
