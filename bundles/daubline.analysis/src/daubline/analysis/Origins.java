package daubline.analysis;

import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.TrialForecast;
import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.record.LogData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.process.BurnQuantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Where numbers come from that were worked out: formula or method, then what went in, down to what somebody typed. */
public final class Origins {

  private Origins() {
  }

  /** The agreement of a pair: the mean over the criteria tested, each leading to its two sides. */
  public static Trail agreement(Comparison c) {
    List<Trail> from = new ArrayList<>(c.criteria().stream().filter(CriterionResult::isTested).map(CriterionResult::trail).toList());
    from.addAll(sides(c));
    String value = Double.isNaN(c.agreement()) ? "not tested" : Printed.fixed(c.agreement(), 0) + " (" + Printed.fixed(c.low(), 0) + "–" + Printed.fixed(c.high(), 0)
        + "), coverage " + Printed.fixed(c.coverage() * 100, 0) + "\u00A0%";
    return Trail.reckoned("Agreement of " + c.trialName() + " with " + c.sheetName(), value,
        "weighted over the criteria that could be tested, median and 5–95 % of draws from the uncertainty of both sides; coverage is their share of all weight", from);
  }

  private static List<Trail> sides(Comparison c) {
    return List.of(Trail.entry("trial", c.trialName(), c.trial()), Trail.entry("compared with", c.sheetName(), c.sheet()));
  }

  /** What one criterion says of a pair; where it could not be tested, the reason and both sides. */
  public static Trail criterion(Comparison c, CriterionResult r) {
    if (r.isTested()) {
      return r.trail();
    }
    List<Trail> from = new ArrayList<>(List.of(r.trail()));
    from.addAll(sides(c));
    return new Trail(r.name() + ", " + c.trialName() + " beside " + c.sheetName(), r.verdict().word() + ": " + r.reason(), "", from);
  }

  /** Whatever is stated, recorded and analysed of a trial, as branches of entries. */
  public static List<Trail> of(StudySnapshot study, TrialData trial) {
    List<Trail> all = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      branch(all, "Values " + stage.word(), trial.values().getOrDefault(stage, java.util.Map.of()).values().stream().flatMap(List::stream).map(Statement::trail));
    }
    study.record().trial(trial.id()).ifPresent(r -> recorded(all, r));
    all.addAll(of(trial.found()));
    return all;
  }

  private static void recorded(List<Trail> all, TrialRecord record) {
    branch(all, "Run log", record.log().stream().filter(e -> !e.charged().isEmpty() || !e.values().isEmpty()).map(Origins::entry));
    branch(all, "Pieces", record.pieces().stream().map(p -> Trail.entry(p.name(), "", p.id(), statements(p.values().values().stream().flatMap(List::stream)))));
    branch(all, "Predictions", record.predictions().stream().map(p -> p.statement().trail()));
  }

  private static Trail[] statements(Stream<Statement> statements) {
    return statements.map(Statement::trail).toArray(Trail[]::new);
  }

  /** A line of the run log: what was charged or measured, when, and its entry. */
  public static Trail entry(LogData e) {
    List<Trail> from = new ArrayList<>();
    e.charged().forEach(c -> from.add(Trail.of(c.material().word() + (c.lot().isEmpty() ? "" : " of lot " + c.lot()), Printed.withUnit(c.mass(), Units.canonical(Quantity.MASS)))));
    e.values().values().forEach(v -> v.forEach(s -> from.add(s.trail())));
    return new Trail(e.kind(), e.at(), e.id(), from);
  }

  /** Charges of a trial in the order of the log. */
  public static List<Trail> charges(TrialRecord record) {
    return record.log().stream().filter(e -> !e.charged().isEmpty()).map(Origins::entry).toList();
  }

  /** Whatever a sheet states: claims, residues, analyses. */
  public static List<Trail> of(SheetData sheet) {
    List<Trail> all = new ArrayList<>();
    branch(all, "Claims of " + sheet.name(), sheet.statements().values().stream().flatMap(List::stream).map(Statement::trail));
    branch(all, "Residues of " + sheet.name(), sheet.residues().stream().map(ClassMass::trail));
    branch(all, "Analyses of " + sheet.name(), sheet.analyses().stream().map(AnalysisData::trail));
    return all;
  }

  /** Trails of these variables of a trial, at whatever stage and in whatever part they are stated. */
  public static List<Trail> of(StudySnapshot study, TrialData trial, String... variables) {
    List<String> wanted = Arrays.asList(variables);
    Stream<Statement> values = trial.values().values().stream().flatMap(m -> m.entrySet().stream()).filter(e -> wanted.contains(e.getKey())).flatMap(e -> e.getValue().stream());
    Stream<Statement> pieces = study.record().trial(trial.id()).stream().flatMap(r -> r.pieces().stream()).flatMap(p -> p.values().entrySet().stream())
        .filter(e -> wanted.contains(e.getKey())).flatMap(e -> e.getValue().stream());
    Stream<Statement> found = wanted.stream().flatMap(v -> trial.found().about(v).stream());
    return Stream.of(values, pieces, found).flatMap(s -> s).map(Statement::trail).distinct().toList();
  }

  /** Trails of these variables of a trial among its values and remains. */
  public static List<Trail> stated(TrialData trial, String... variables) {
    Stream<Statement> values = Arrays.stream(variables).flatMap(v -> trial.values().values().stream().flatMap(m -> m.getOrDefault(v, List.of()).stream()));
    return Stream.concat(values, Arrays.stream(variables).flatMap(v -> trial.found().about(v).stream())).map(Statement::trail).distinct().toList();
  }

  /** A figure said of a trial before its fire. */
  public static Trail forecast(TrialForecast forecast, BurnQuantity quantity, String value) {
    return Trail.reckoned(what(quantity) + " of " + forecast.name(), value, quantity.source().text() + " (" + quantity.standing().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
        + "); interval of 90 % from draws of what is uncertain, seed " + daubline.analysis.forecast.TrialPlans.SEED, used(forecast.plan()));
  }

  /** A figure that was observed in a trial. */
  public static Trail observed(TrialForecast forecast, BurnQuantity quantity, String value) {
    String where = forecast.outcome(quantity).map(o -> o.where()).orElse("");
    return new Trail(what(quantity) + " of " + forecast.name() + ", observed", value, forecast.trial(), List.of(Trail.entry("taken from", where, forecast.trial())));
  }

  private static String what(BurnQuantity quantity) {
    String symbol = Figures.symbol(quantity);
    return quantity.label() + (symbol.isEmpty() ? "" : " [" + symbol + "]");
  }

  /** The values that the forecast and the balance of a trial rest on, each with its entry. */
  public static List<Trail> used(TrialPlan plan) {
    return List.of(new Trail("What " + plan.name() + " rests on", "", plan.trial(), plan.used()));
  }

  private static void branch(List<Trail> all, String what, Stream<Trail> from) {
    List<Trail> list = from.toList();
    if (!list.isEmpty()) {
      all.add(new Trail(what, "", "", list));
    }
  }
}
