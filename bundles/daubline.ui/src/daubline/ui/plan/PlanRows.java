package daubline.ui.plan;

import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.FactorReader;
import daubline.analysis.design.SeriesSetup;
import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.base.Printed;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.design.advise.Question;
import daubline.model.Factor;
import daubline.model.ForbiddenCombination;
import daubline.model.Labour;
import daubline.model.ModelFactory;
import daubline.model.Provision;
import daubline.model.Series;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Lists what a series is planned with as rows that can be typed into; the last row of each group adds one more. */
final class PlanRows {

  private static final String[] SIZE = {"mostTrials", "repeatTrials", "centreTrials", "furnaceRatio", "burnsPerDay", "dayRatio", "seed"};
  private static final String[] STOCK = {"available", "perTrial", "perFurnace", "perRefit", "once", "moisture", "losses", "reserve", "unit"};
  private static final String[] LABOUR = {"team", "firstDay", "lastDay", "weekdays", "daysOff", "firings", "buildDays", "buildPeople", "dryDays", "burnDays", "burnPeople",
      "refitDays", "refitPeople", "refitDryDays", "failureShare", "assurance"};
  /** Shares, which are typed and shown in per cent. */
  private static final List<String> SHARES = List.of("moisture", "reserve", "failureShare", "assurance");

  private final OpenStudy study;
  private final Series series;
  private final Variables variables;
  private final List<PlanRow> rows = new ArrayList<>();

  private PlanRows(OpenStudy study, Series series) {
    this.study = study;
    this.series = series;
    variables = StudyVariables.of(study.session().study());
  }

  static List<PlanRow> of(OpenStudy study, Series series) {
    PlanRows make = new PlanRows(study, series);
    make.factors();
    make.forbidden();
    make.size();
    make.stock();
    make.labour();
    return make.rows;
  }

  private void factors() {
    rows.add(PlanRow.heading(Words.of("plan.varied")));
    List<String> aims = Arrays.stream(Question.values()).map(PlanRows::aim).toList();
    Question now = DesignBrief.question(series.getAim() == null ? "" : series.getAim()).orElse(Question.HOW_MUCH);
    rows.add(PlanRow.of(Words.of("plan.aim"), aim(now), Words.of("plan.aim.tip"), text -> Arrays.stream(Question.values()).filter(q -> aim(q).equals(text)).findFirst()
        .ifPresent(q -> study.edit("change.field", Words.of("plan.aim"), () -> series.setAim(q.name()))), aims));
    for (Factor factor : series.getFactors()) {
      String name = name(factor.getVariable());
      rows.add(PlanRow.of(name, text(factor.getLevels()), about(factor.getVariable()), text -> levels(factor, name, text), List.of())
          .and(when(factor), text -> study.edit("change.field", name, () -> {
            factor.setHardToChange(text.equals(Words.of("plan.furnace")));
            factor.setDaily(text.equals(Words.of("plan.day")));
          }), List.of(Words.of("plan.trial"), Words.of("plan.furnace"), Words.of("plan.day"))).about(variables.find(text(factor.getVariable())).orElse(null)).heldBy(factor));
    }
    rows.add(PlanRow.of(Words.of("plan.add.factor"), "", Words.of("plan.add.factor.tip"), this::addFactor, offered()));
  }

  private static String aim(Question question) {
    return Words.of("question." + question.name());
  }

  private static String when(Factor factor) {
    return Words.of(factor.isHardToChange() ? "plan.furnace" : factor.isDaily() ? "plan.day" : "plan.trial");
  }

  private void levels(Factor factor, String name, String text) {
    study.edit(text.isBlank() ? "change.remove" : "change.value", name, () -> {
      if (text.isBlank()) {
        EcoreUtil.delete(factor);
      } else {
        factor.setLevels(text.strip());
      }
    });
  }

  private List<String> offered() {
    List<String> names = new ArrayList<>(variables.all().stream().filter(v -> v.isAt(Variable.Place.PLANNED) && v.type() != ValueType.TEXT)
        .filter(v -> series.getFactors().stream().noneMatch(f -> v.id().equals(f.getVariable()))).map(Words::told).map(Variable::name).toList());
    if (study.session().study().getReconstructions().size() > 1) {
      names.add(0, Words.of("plan.reconstruction"));
    }
    return names;
  }

  private void addFactor(String text) {
    String name = text.strip();
    if (name.equalsIgnoreCase(Words.of("plan.reconstruction"))) {
      SeriesSetup.factor(study.session(), series, FactorReader.RECONSTRUCTION, "", true, false);
      return;
    }
    meant(name).ifPresent(v -> SeriesSetup.factor(study.session(), series, v.id(), usual(v), SeriesSetup.isBuilt(v), false));
  }

  /** A variable by its whole name or id, otherwise the first whose name begins with what was typed, otherwise that holds it. */
  private Optional<Variable> meant(String typed) {
    String wanted = typed.toLowerCase(Locale.ROOT);
    List<Variable> varied = variables.all().stream().filter(v -> v.isAt(Variable.Place.PLANNED) && v.type() != ValueType.TEXT).toList();
    return wanted.isEmpty() ? Optional.empty() : varied.stream().filter(v -> names(v).contains(wanted) || v.id().equals(typed)).findFirst()
        .or(() -> varied.stream().filter(v -> names(v).stream().anyMatch(n -> n.startsWith(wanted))).findFirst())
        .or(() -> varied.stream().filter(v -> names(v).stream().anyMatch(n -> n.contains(wanted))).findFirst());
  }

  /** The name of a variable in the language of the person and in English, in lower case. */
  private static List<String> names(Variable v) {
    return Stream.of(Words.told(v).name(), v.name()).map(n -> n.toLowerCase(Locale.ROOT)).toList();
  }

  /** The middle half of the plausible range as a start to be typed over; every word of a category. */
  private static String usual(Variable v) {
    if (v.type() != ValueType.NUMBER || Double.isNaN(v.plausibleLow()) || Double.isNaN(v.plausibleHigh())) {
      return v.type() == ValueType.NUMBER ? "" : String.join("; ", v.words());
    }
    double low = v.unit().fromCanonical(v.plausibleLow());
    double high = v.unit().fromCanonical(v.plausibleHigh());
    return Printed.number(low + (high - low) * 0.15, 2) + " to " + Printed.number(low + (high - low) * 0.3, 2) + (v.unit().symbol().isEmpty() ? "" : " " + v.unit().symbol());
  }

  private String name(String variable) {
    return FactorReader.RECONSTRUCTION.equals(variable) ? Words.of("plan.reconstruction") : variables.find(text(variable)).map(Words::told).map(Variable::name).orElse(text(variable));
  }

  private String about(String variable) {
    return Words.of("plan.levels.tip") + variables.find(text(variable)).map(v -> "\n" + Words.told(v).meaning()).orElse("");
  }

  private void forbidden() {
    rows.add(PlanRow.heading(Words.of("plan.forbidden")));
    for (ForbiddenCombination f : series.getForbidden()) {
      rows.add(PlanRow.of(Words.of("plan.never"), text(f.getConditions()), Words.of("plan.never.tip"), text -> study.edit(text.isBlank() ? "change.remove" : "change.value",
          Words.of("plan.never"), () -> {
            if (text.isBlank()) {
              EcoreUtil.delete(f);
            } else {
              f.setConditions(text.strip());
            }
          }), List.of()).and(text(f.getBecause()), text -> study.edit("change.value", Words.of("plan.never"), () -> f.setBecause(text.strip())), List.of()).heldBy(f));
    }
    rows.add(PlanRow.of(Words.of("plan.add.never"), "", Words.of("plan.never.tip"), text -> {
      if (!text.isBlank()) {
        SeriesSetup.forbid(study.session(), series, text.strip(), "");
      }
    }, List.of()));
  }

  private void size() {
    rows.add(PlanRow.heading(Words.of("plan.size")));
    for (String feature : SIZE) {
      field(series, feature, Words.of("plan.size"), () -> series);
    }
  }

  private void stock() {
    for (Provision provision : series.getProvisions()) {
      rows.add(PlanRow.heading(Words.of("plan.stock", OpenStudy.nameOf(provision))));
      if (!provision.getLots().isEmpty()) {
        rows.add(PlanRow.of(Words.of("plan.lots"), String.join(", ", provision.getLots().stream().map(OpenStudy::nameOf).toList()), Words.of("plan.lots.tip"), null, List.of()).heldBy(provision));
      }
      for (String feature : STOCK) {
        field(provision, feature, OpenStudy.nameOf(provision), () -> provision);
        if (feature.equals("moisture")) {
          basis(provision);
        }
      }
    }
    rows.add(PlanRow.heading(Words.of("plan.more.stock")));
    rows.add(PlanRow.of(Words.of("plan.add.stock"), "", Words.of("plan.add.stock.tip"), text -> {
      if (!text.isBlank()) {
        SeriesSetup.provision(study.session(), series, text.strip(), p -> p.setUnit("kg"));
      }
    }, List.of()));
  }

  /** Of what the water is a share: moist or dry mass. */
  private void basis(Provision provision) {
    List<String> words = List.of(Words.of("plan.basis.wet"), Words.of("plan.basis.dry"));
    rows.add(PlanRow.of(Words.of("plan.basis"), words.get(provision.isDryBasis() ? 1 : 0), Words.of("plan.basis.tip"), typed -> {
      if (words.contains(typed)) {
        study.edit("change.value", OpenStudy.nameOf(provision) + ", " + Words.of("plan.basis"), () -> provision.setDryBasis(words.indexOf(typed) == 1));
      }
    }, words).heldBy(provision));
  }

  private void labour() {
    rows.add(PlanRow.heading(Words.of("plan.labour")));
    Labour shown = series.getLabour() == null ? ModelFactory.eINSTANCE.createLabour() : series.getLabour();
    for (String feature : LABOUR) {
      field(shown, feature, Words.of("plan.labour"), () -> {
        if (series.getLabour() == null) {
          series.setLabour(ModelFactory.eINSTANCE.createLabour());
        }
        return series.getLabour();
      });
    }
  }

  private void field(EObject shown, String feature, String part, java.util.function.Supplier<EObject> owner) {
    EStructuralFeature f = shown.eClass().getEStructuralFeature(feature);
    String text = print(shown.eGet(f), SHARES.contains(feature));
    Consumer<String> put = typed -> parse(f, typed.strip()).ifPresent(value -> study.edit("change.value", part + ", " + Words.of("plan.field." + feature),
        () -> owner.get().eSet(f, value.orElse(null))));
    rows.add(PlanRow.of(Words.of("plan.field." + feature), text, Words.orElse("plan.field." + feature + ".tip", ""), put, List.of()).heldBy(shown));
  }

  private static String print(Object value, boolean share) {
    return switch (value) {
      case null -> "";
      case Double number -> share ? Printed.number(number * 100) + " %" : Printed.number(number);
      default -> value.toString();
    };
  }

  /** The value typed; the inner one is empty to take it away, the outer one when the text is no such value. */
  private static Optional<Optional<Object>> parse(EStructuralFeature f, String typed) {
    Class<?> type = f.getEType().getInstanceClass();
    if (typed.isEmpty()) {
      return Optional.of(Optional.empty());
    }
    if (type == String.class) {
      return Optional.of(Optional.of(typed));
    }
    if (type == Long.class) {
      return typed.matches("\\d{1,18}") ? Optional.of(Optional.of(Long.valueOf(typed))) : Optional.empty();
    }
    String digits = typed.replace("%", "").strip();
    Optional<Double> number = Numbers.parse(digits, digits.indexOf(',') >= 0 ? DecimalSign.COMMA : DecimalSign.POINT).filter(n -> n >= 0);
    if (type == Integer.class) {
      return number.filter(n -> n == Math.rint(n) && n < 10_000).map(n -> Optional.of(n.intValue()));
    }
    return number.map(n -> Optional.of(SHARES.contains(f.getName()) ? n / 100 : n));
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
