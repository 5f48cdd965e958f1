package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.PlanningData.WishData;
import daubline.base.Finding;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.design.advise.Question;
import daubline.model.Provision;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The commands that write what a series is planned with. */
final class DesignSetup {

  private DesignSetup() {
  }

  /** A new series. */
  @Command(name = "series", mixinStandardHelpOptions = true, description = "Add a series to a study.")
  static final class Series implements Callable<Integer> {

    @Mixin
    private StudyArgument study;

    @Parameters(index = "1", paramLabel = "NAME", description = "name of the new series")
    private String name;

    @Option(names = "--question", paramLabel = "TEXT", defaultValue = "", description = "what the series is to answer")
    private String question;

    @Option(names = "--aim", paramLabel = "AIM", defaultValue = "how-much", description = "which-matter, how-much, best-setting or explore (default: ${DEFAULT-VALUE})")
    private String aim;

    @Override
    public Integer call() throws Exception {
      try (StudySession session = study.open()) {
        SeriesSetup.series(session, name, question, aim(aim));
        session.save();
        Out.line("added the series %s", name);
        return Out.DONE;
      }
    }
  }

  /** The question that a word names. */
  static Question aim(String word) {
    return DesignBrief.question(word).orElseThrow(() -> new IllegalArgumentException("“" + word + "” is no aim; choose which-matter, how-much, best-setting or explore"));
  }

  /** What is varied. */
  @Command(name = "factor", mixinStandardHelpOptions = true, description = "Vary something on purpose; anew when it is varied already.")
  static final class Factor implements Callable<Integer> {

    @Mixin
    private SeriesArgument series;

    @Parameters(index = "2", paramLabel = "VARIABLE", description = "id or name of the variable, or “reconstruction”")
    private String variable;

    @Parameters(index = "3", paramLabel = "LEVELS", arity = "0..1", defaultValue = "",
        description = "“500 to 800” for limits, “500; 650; 800” or “shaft; domed” for levels; all words of the variable when left out")
    private String levels;

    @Option(names = "--with-furnace", description = "set when the furnace is built")
    private boolean withFurnace;

    @Option(names = "--each-trial", description = "set for each trial, though the furnace is built with it")
    private boolean eachTrial;

    @Option(names = "--with-day", description = "set for a day of burning")
    private boolean withDay;

    @Override
    public Integer call() throws Exception {
      return series.change((session, s, snapshot) -> {
        String id = id(StudyVariables.of(session.study()), variable);
        boolean built = StudyVariables.of(session.study()).find(id).map(SeriesSetup::isBuilt).orElse(true);
        SeriesSetup.factor(session, s, id, levels, withFurnace || built && !eachTrial && !withDay, withDay);
        DesignBrief brief = DesignBrief.of(Snapshots.of(session), DesignBrief.find(Snapshots.of(session), s.getId()));
        refuse(brief.findings());
        brief.factors().stream().filter(f -> f.id().equals(id)).forEach(f -> Out.line("%s: %s, set %s", f.name(),
            f.isCategory() ? String.join(", ", f.names()) : f.show(-1) + " to " + f.show(1), f.change().word()));
      });
    }
  }

  private static void refuse(List<Finding> findings) {
    findings.stream().filter(Finding::isError).filter(f -> !f.code().equals("design.no-factors")).findFirst().ifPresent(f -> {
      throw new IllegalArgumentException(f.where() + ": " + f.what() + " – " + f.remedy());
    });
  }

  /** The id of a variable by id or name. */
  static String id(Variables variables, String wanted) {
    if (wanted.equals(daubline.analysis.design.FactorReader.RECONSTRUCTION)) {
      return wanted;
    }
    return variables.find(wanted).or(() -> variables.all().stream().filter(v -> v.name().equalsIgnoreCase(wanted)).findFirst()).map(Variable::id)
        .orElseThrow(() -> new IllegalArgumentException("there is no variable “" + wanted + "”; “variables” lists them all"));
  }

  /** What must not be burnt. */
  @Command(name = "forbid", mixinStandardHelpOptions = true, description = "Forbid a combination of settings.")
  static final class Forbid implements Callable<Integer> {

    @Mixin
    private SeriesArgument series;

    @Parameters(index = "2", paramLabel = "RULE", description = "such as “Air flow at least 700 and Furnace type is domed”")
    private String rule;

    @Option(names = "--because", paramLabel = "TEXT", defaultValue = "", description = "why")
    private String because;

    @Override
    public Integer call() throws Exception {
      return series.change((session, s, snapshot) -> {
        SeriesSetup.forbid(session, s, rule, because);
        DesignBrief brief = DesignBrief.of(Snapshots.of(session), DesignBrief.find(Snapshots.of(session), s.getId()));
        refuse(brief.findings());
        brief.rules().forEach(r -> Out.line(r.text(brief.factors())));
      });
    }
  }

  /** What the plan is asked for. */
  @Command(name = "size", mixinStandardHelpOptions = true,
      description = "State how large the plan may be and what it is asked for beside its factors; “design propose” takes it from there. 0 takes a number back.")
  static final class Size implements Callable<Integer> {

    @Mixin
    private SeriesArgument series;

    @Option(names = "--trials", paramLabel = "N", description = "most trials (default: as many as stock and season assure)")
    private Integer trials;

    @Option(names = "--centres", paramLabel = "N", description = "at least so many centre trials: measured factors in the middle of their limits")
    private Integer centres;

    @Option(names = "--repeats", paramLabel = "N", description = "so many trials burnt once more")
    private Integer repeats;

    @Option(names = "--burns-per-day", paramLabel = "N", description = "trials that may share a day, each in another furnace")
    private Integer perDay;

    @Option(names = "--furnace-ratio", paramLabel = "R", description = "variance between furnaces over that between trials (usual: 1)")
    private Double furnaceRatio;

    @Option(names = "--day-ratio", paramLabel = "R", description = "variance between days over that between trials (usual: 0)")
    private Double dayRatio;

    @Option(names = "--seed", paramLabel = "N", description = "seed of the searches and of the random order (default: today's date)")
    private Long seed;

    @Override
    public Integer call() throws Exception {
      return series.change((session, s, snapshot) -> {
        SeriesSetup.wishes(session, s, this::fill);
        WishData w = DesignBrief.find(Snapshots.of(session), s.getId()).planning().wishes();
        Out.line("%s trials, at least %d in the centre, %d repeats, %d a day; variance between furnaces %s and between days %s times that between trials",
            w.trials() == 0 ? "as many as assured" : "at most " + w.trials(), w.centres(), w.repeats(), w.burnsPerDay(), daubline.base.Printed.number(w.furnaceRatio()),
            daubline.base.Printed.number(w.dayRatio()));
      });
    }

    private void fill(daubline.model.Series s) {
      List<? extends Number> given = java.util.stream.Stream.of(trials, centres, repeats, perDay, furnaceRatio, dayRatio).filter(n -> n != null).toList();
      given.stream().filter(n -> !(n.doubleValue() >= 0) || n.doubleValue() > 1000).findFirst().ifPresent(n -> {
        throw new IllegalArgumentException(n + " is no size of a plan; give a number from 0 to 1000");
      });
      set(trials, s::setMostTrials);
      set(centres, s::setCentreTrials);
      set(repeats, s::setRepeatTrials);
      set(perDay, s::setBurnsPerDay);
      set(furnaceRatio, s::setFurnaceRatio);
      set(dayRatio, s::setDayRatio);
      set(seed, s::setSeed);
    }
  }

  /** What there is. */
  @Command(name = "stock", mixinStandardHelpOptions = true, description = "State a stock and what a trial, a new furnace and a refit take of it.")
  static final class Stock implements Callable<Integer> {

    @Mixin
    private SeriesArgument series;

    @Parameters(index = "2", paramLabel = "NAME", arity = "0..1", defaultValue = "", description = "what it is, such as charcoal")
    private String name;

    @Option(names = "--from-lots", description = "take ore, charcoal and clay from the study's lots, and what a trial takes from past trials")
    private boolean fromLots;

    @Option(names = "--unit", paramLabel = "UNIT", description = "its unit (default: kg)")
    private String unit;

    @Option(names = "--available", paramLabel = "N", description = "how much there is as delivered; left out, what its lots hold")
    private Double available;

    @Option(names = "--lot", paramLabel = "LOT", description = "a lot it stands in, by name or id; may be repeated")
    private List<String> lots = List.of();

    @Option(names = "--moisture", paramLabel = "PERCENT", description = "water in it")
    private Double moisture;

    @Option(names = "--dry-basis", description = "the water is a share of the dry mass")
    private boolean dryBasis;

    @Option(names = "--losses", paramLabel = "TEXT", description = "such as “roasting 14 %%; sieving 8 %%”")
    private String losses;

    @Option(names = "--reserve", paramLabel = "PERCENT", description = "held back")
    private Double reserve;

    @Option(names = "--once", paramLabel = "N", description = "used once")
    private Double once;

    @Option(names = "--per-trial", paramLabel = "N", description = "used by each trial")
    private Double perTrial;

    @Option(names = "--per-furnace", paramLabel = "N", description = "used by each new furnace")
    private Double perFurnace;

    @Option(names = "--per-refit", paramLabel = "N", description = "used to mend a furnace for one more burn")
    private Double perRefit;

    @Override
    public Integer call() throws Exception {
      return series.change((session, s, snapshot) -> {
        if (fromLots) {
          Out.line("provided from the lots: %s", String.join(", ", SeriesSetup.provideFromLots(session, s, snapshot)));
        } else if (name.isBlank()) {
          throw new IllegalArgumentException("name the stock, such as charcoal, or use --from-lots");
        } else {
          SeriesSetup.provision(session, s, name, p -> fill(session, p));
        }
        DesignCapacity.print(Snapshots.of(session), DesignBrief.find(Snapshots.of(session), s.getId()));
      });
    }

    private void fill(StudySession session, Provision p) {
      set(unit, p::setUnit);
      set(available, p::setAvailable);
      set(moisture, v -> p.setMoisture(v / 100));
      p.setDryBasis(dryBasis || p.isDryBasis());
      set(losses, p::setLosses);
      set(reserve, v -> p.setReserve(v / 100));
      set(once, p::setOnce);
      set(perTrial, p::setPerTrial);
      set(perFurnace, p::setPerFurnace);
      set(perRefit, p::setPerRefit);
      lots.forEach(l -> p.getLots().add(session.study().getLots().stream().filter(lot -> l.equals(lot.getId()) || l.equals(lot.getName())).findFirst()
          .orElseThrow(() -> new IllegalArgumentException("the study has no lot “" + l + "”"))));
    }
  }

  private static <T> void set(T value, Consumer<T> setter) {
    Optional.ofNullable(value).ifPresent(setter);
  }

  /** Hands and days. */
  @Command(name = "labour", mixinStandardHelpOptions = true, description = "State the team, the season and how long things take.")
  static final class Labour implements Callable<Integer> {

    @Mixin
    private SeriesArgument series;

    @Option(names = "--team", paramLabel = "N", description = "how many come on a working day (default: everybody in the study)")
    private Integer team;

    @Option(names = "--from", paramLabel = "DATE", description = "first day, such as 2031-05-10")
    private String from;

    @Option(names = "--until", paramLabel = "DATE", description = "last day")
    private String until;

    @Option(names = "--weekdays", paramLabel = "DAYS", description = "days of the week on which work is done, such as “Saturday; Sunday”")
    private String weekdays;

    @Option(names = "--days-off", paramLabel = "DATES", description = "dates without work, with “;” between them")
    private String daysOff;

    @Option(names = "--firings", paramLabel = "N", description = "how often a furnace can be burnt (default: 2)")
    private Integer firings;

    @Option(names = "--build", paramLabel = "DAYS,PEOPLE", split = ",", description = "days and people to build a furnace (default: 2,2)")
    private List<Integer> build;

    @Option(names = "--dry", paramLabel = "DAYS", description = "days until a new furnace can be burnt (default: 14)")
    private Integer dry;

    @Option(names = "--burn", paramLabel = "DAYS,PEOPLE", split = ",", description = "days and people of a burn with clearing and recording (default: 1,4)")
    private List<Integer> burn;

    @Option(names = "--refit", paramLabel = "DAYS,PEOPLE,DRY", split = ",", description = "days and people to mend a furnace, and days to dry (default: 1,1,2)")
    private List<Integer> refit;

    @Option(names = "--failures", paramLabel = "PERCENT", description = "trials that fail")
    private Double failures;

    @Option(names = "--assurance", paramLabel = "PERCENT", description = "how sure the number of successful trials must be (default: 90)")
    private Double assurance;

    @Option(names = "--permission", paramLabel = "NAME", description = "a permission that the work needs; may be repeated")
    private List<String> permissions = List.of();

    @Override
    public Integer call() throws Exception {
      return series.change((session, s, snapshot) -> {
        SeriesSetup.labour(session, s, l -> fill(session, l));
        DesignCapacity.print(Snapshots.of(session), DesignBrief.find(Snapshots.of(session), s.getId()));
      });
    }

    private void fill(StudySession session, daubline.model.Labour l) {
      set(team, l::setTeam);
      set(from, l::setFirstDay);
      set(until, l::setLastDay);
      set(weekdays, l::setWeekdays);
      set(daysOff, l::setDaysOff);
      set(firings, l::setFirings);
      set(dry, l::setDryDays);
      several(build, "--build", Arrays.asList(l::setBuildDays, l::setBuildPeople));
      several(burn, "--burn", Arrays.asList(l::setBurnDays, l::setBurnPeople));
      several(refit, "--refit", Arrays.asList(l::setRefitDays, l::setRefitPeople, l::setRefitDryDays));
      set(failures, v -> l.setFailureShare(v / 100));
      set(assurance, v -> l.setAssurance(v / 100));
      permissions.forEach(p -> l.getPermissions().add(session.study().getPermissions().stream().filter(k -> p.equals(k.getId()) || p.equals(k.getName())).findFirst()
          .orElseThrow(() -> new IllegalArgumentException("the study has no permission “" + p + "”"))));
    }

    private static void several(List<Integer> values, String option, List<Consumer<Integer>> setters) {
      if (values != null && values.size() != setters.size()) {
        throw new IllegalArgumentException(option + " takes " + setters.size() + " numbers with commas between them, not " + values.size());
      }
      for (int i = 0; values != null && i < setters.size(); i++) {
        setters.get(i).accept(values.get(i));
      }
    }
  }
}
