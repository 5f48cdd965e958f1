package daubline.intake;

import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import daubline.model.RemainsSheet;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The form of trials: one row a trial, values in columns named by stage and variable. */
final class TrialsForm implements Form {

  private static final Map<Variable.Place, Stage> STAGE_OF = new EnumMap<>(Map.of(Variable.Place.PLANNED, Stage.PLANNED,
      Variable.Place.BUILT, Stage.AS_BUILT, Variable.Place.FIRED, Stage.AS_FIRED, Variable.Place.REMAINS, Stage.AS_FOUND));
  private static final List<String> USUAL = List.of("planned:base_internal_diameter", "built:base_internal_diameter",
      "found:base_internal_diameter",
      "planned:furnace_height", "built:furnace_height", "found:surviving_height", "built:wall_thickness",
      "found:wall_thickness", "built:inlet_bore",
      "built:inlet_height_above_floor", "built:inlet_angle", "fired:air_flow", "fired:air_device", "fired:ore_total",
      "fired:charcoal_total",
      "fired:charge_ratio", "fired:main_sequence_duration", "fired:temperature_peak_inlet", "fired:bloom_mass",
      "found:residue_total",
      "found:tapped_slag");

  @Override
  public Target target() {
    return Target.TRIALS;
  }

  @Override
  public String explanation() {
    return "One row a trial. Values stand in columns named stage:variable, the stage being planned, built, fired or "
        + "found. A row is recognised again by its id, "
        + "or by series and name; a value by stage, variable, citation and page. An empty cell says nothing and changes "
        + "nothing.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(fixed());
    for (Variable.Place place : Variable.Place.values()) {
      if (STAGE_OF.containsKey(place)) {
        variables.at(place).forEach(v -> columns.add(Families.staged(STAGE_OF.get(place), v)));
      }
    }
    return columns;
  }

  @Override
  public List<FormColumn> template(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(fixed());
    USUAL.forEach(heading -> Families.staged(Heading.of(heading), variables).ifPresent(columns::add));
    return columns;
  }

  private static List<FormColumn> fixed() {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id(),
        FormColumn.text("series", "The series; a new name adds one. May be empty when the study has one series.",
        "Season 2031"),
        FormColumn.text("name", "Name of the trial, unique in its series.", "T4").must(),
        FormColumn.of("number", Content.WHOLE, "Number in the series.", "4"),
        FormColumn.word("kind", Shared.words(TrialKind.values(), TrialKind::word), "What the trial is for."),
        FormColumn.word("status", Shared.words(TrialStatus.values(), TrialStatus::word),
        "Where it stands; failed trials belong in the table."),
        FormColumn.of("date", Content.DATE, "Day of the fire.", "2031-08-16"),
        FormColumn.text("build", "The furnace, by name; a new name adds one.", "Furnace A"),
        FormColumn.text("reconstruction", "The reconstruction that is tried, by name or id.", "Tall shaft"),
        FormColumn.text("repeat_of", "The trial that this one repeats.", "T2"),
        FormColumn.text("leader", "Who led it.", "M. Thorne"),
        FormColumn.of("people", Content.NAMES, "Who took part, parted by semicolons.", "J. Ashe; I. Bell"),
        FormColumn.of("lots", Content.NAMES, "Lots that were used, parted by semicolons.",
        "Bog ore 2031, roasted; Oak charcoal"),
        FormColumn.of("excluded", Content.YES_NO, "Whether it stays out of comparison.", "no"),
        FormColumn.text("excluded_because", "Why it stays out.", "blower failed for two hours"),
        FormColumn.text("conclusion", "What was learnt.", "Burden hung above the inlet."), Shared.note()));
    columns.addAll(Shared.origin());
    return columns;
  }

  @Override
  public Optional<FormColumn> column(Heading heading, Variables variables) {
    return Families.staged(heading, variables)
        .or(() -> fixed().stream().filter(c -> Heading.key(c.id()).equals(heading.key())).findFirst());
  }

  @Override
  public Optional<String> hint(Heading heading, Variables variables) {
    return Families.variable(heading.name(), variables)
        .map(v -> "say at which stage: planned:" + v.id() + ", built:" + v.id() + ", fired:" + v.id() + " or found:" + v.id());
  }

  @Override
  public String key(Row row) {
    return row.has("id") ? row.key("id") : row.key("series", "name");
  }

  @Override
  public void write(Row row, Draft draft) {
    Finder finder = new Finder(row, draft);
    String name = row.must("name");
    Optional<Trial> named = draft.named(row, Trial.class);
    Series series = named.map(t -> (Series) t.eContainer()).orElseGet(finder::series);
    if (name.isEmpty() || series == null || row.isFaulty()) {
      return;
    }
    Trial trial = named.or(() -> series.getTrials().stream().filter(t -> !row.has("id") && name.equals(t.getName()))
        .findFirst()).orElseGet(() -> {
      Trial made = draft.subject(row, ModelFactory.eINSTANCE.createTrial());
      series.getTrials().add(made);
      return made;
    });
    describe(row, draft.tally(), trial, name);
    connect(row, draft, finder, trial);
    row.values().forEach(column -> row.value(column).ifPresent(value -> write(row, draft, finder, trial, column, value)));
  }

  private static void describe(Row row, Tally tally, Trial trial, String name) {
    tally.set(trial, Literals.NAMED__NAME, name);
    tally.set(trial, Literals.NAMED__NOTE, row.orNull("note"));
    tally.set(trial, Literals.TRIAL__NUMBER, row.whole("number"));
    tally.set(trial, Literals.TRIAL__KIND, row.word("kind", TrialKind.class, TrialKind::word));
    tally.set(trial, Literals.TRIAL__STATUS, row.word("status", TrialStatus.class, TrialStatus::word));
    tally.set(trial, Literals.TRIAL__ON, row.date("date"));
    tally.set(trial, Literals.TRIAL__EXCLUDED, row.yesNo("excluded"));
    tally.set(trial, Literals.TRIAL__EXCLUDED_BECAUSE, row.orNull("excluded_because"));
    tally.set(trial, Literals.TRIAL__CONCLUSION, row.orNull("conclusion"));
  }

  private static void connect(Row row, Draft draft, Finder finder, Trial trial) {
    Tally tally = draft.tally();
    tally.set(trial, Literals.TRIAL__BUILD, finder.brought(draft.study().getBuilds(), "build",
        ModelFactory.eINSTANCE::createFurnaceBuild));
    if (row.has("reconstruction")) {
      tally.set(trial, Literals.TRIAL__RECONSTRUCTION,
          finder.required(draft.study().getReconstructions(), "reconstruction", row.text("reconstruction"), "reconstruction"));
    }
    if (row.has("repeat_of")) {
      tally.set(trial, Literals.TRIAL__REPEAT_OF, finder.trial("repeat_of"));
    }
    tally.set(trial, Literals.TRIAL__LEADER, finder.person("leader"));
    tally.include(trial, trial.getPeople(), finder.people("people"));
    tally.include(trial, trial.getLots(), finder.lots("lots"));
  }

  private static void write(Row row, Draft draft, Finder finder, Trial trial, Bound column, ReadValue value) {
    Stage stage = Families.stage(column.column().id()).orElseThrow();
    String variable = column.column().variable().id();
    Citation citation = finder.citation();
    Reading reading = stage == Stage.AS_FOUND ? found(row, draft, finder.remains(trial), variable, citation, value)
        : staged(row, draft, trial, stage, variable, citation, value);
    draft.tally().put(reading, value);
    Shared.origin(row, draft, reading, finder);
  }

  private static Reading staged(Row row, Draft draft, Trial trial, Stage stage, String variable, Citation citation,
      ReadValue value) {
    List<StagedValue> same = trial.getValues().stream().filter(v -> v.getStage() == stage && variable.equals(v.getVariable()))
        .filter(v -> Shared.sameOrigin(v, citation, row.orNull("page"))).toList();
    StagedValue known = Shared.matching(same, value.amount());
    if (known == null) {
      known = draft.tally().fresh(ModelFactory.eINSTANCE.createStagedValue());
      known.setStage(stage);
      known.setVariable(variable);
      trial.getValues().add(known);
      draft.tally().partAdded("added: " + stage.word() + " " + variable + " " + value.typed());
    }
    return known;
  }

  /** A published value of remains is a claim: another value of the same source stands beside it. */
  private static Reading found(Row row, Draft draft, RemainsSheet remains, String variable, Citation citation,
      ReadValue value) {
    List<Claim> same = remains.getClaims().stream().filter(c -> variable.equals(c.getVariable()))
        .filter(c -> Shared.sameOrigin(c, citation, row.orNull("page"))).toList();
    Claim known = Shared.matching(same, value.amount());
    boolean contradicts = known != null && citation != null && !Readings.amount(known).equals(value.amount());
    if (known == null || contradicts) {
      known = draft.tally().fresh(ModelFactory.eINSTANCE.createClaim());
      known.setVariable(variable);
      remains.getClaims().add(known);
      draft.tally().partAdded("added: found " + variable + " " + value.typed());
    }
    return known;
  }
}
