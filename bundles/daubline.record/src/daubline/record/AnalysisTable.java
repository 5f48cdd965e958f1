package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Numbers;
import daubline.base.Oxides;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sample;
import daubline.model.Setting;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Analyses as a grid: each as printed and, below it, what the chosen steps make of it. "&lt;0.05", bdl, n.d., n.a. and 0
 * stay five different things. Totals outside the limits of the study are flagged, never refused.
 */
public final class AnalysisTable extends ObjectTable<AnalysisTable.Line> {

  /** Keys of the settings that hold the limits of an analytical total, as fractions. */
  public static final String LOW = "analysis.total.low";
  /** See {@link #LOW}. */
  public static final String HIGH = "analysis.total.high";
  /** Limits where the study sets none (common practice for bulk analyses, no source). */
  public static final double USUAL_LOW = 0.95;
  /** See {@link #USUAL_LOW}. */
  public static final double USUAL_HIGH = 1.03;

  private static final Unit PERCENT = Units.find(Quantity.FRACTION, "%").orElseThrow();
  /** Slag rich in FeO gains oxygen on ignition, by a ninth of its FeO at most: the loss is then negative. */
  private static final double LARGEST_GAIN = -0.12;

  private final Supplier<List<Analysis>> analyses;
  private final Supplier<List<Sample>> samples;
  private List<AnalysisStep> steps = List.of();
  private boolean normalised = true;

  /** One line: an analysis after some steps. */
  public record Line(Analysis analysis, List<AnalysisStep> steps) {
    boolean isMeasured() {
      return steps.isEmpty();
    }

    Map<String, Amount> parts() {
      Map<String, Amount> parts = AnalysisStep.parts(analysis);
      for (AnalysisStep step : steps) {
        parts = step.apply(parts);
      }
      return parts;
    }
  }

  /**
   * A grid of analyses.
   *
   * @param analyses the list in the study that holds them
   * @param samples the samples that they can be of
   */
  public AnalysisTable(Desk desk, Supplier<List<Analysis>> analyses, Supplier<List<Sample>> samples) {
    super("analyses", desk);
    this.analyses = analyses;
    this.samples = samples;
    refresh();
  }

  /**
   * Chooses what stands below each analysis.
   *
   * @param iron the iron step; MEASURED for none
   * @param sum whether a line normalised to 100 % follows
   */
  public void look(AnalysisStep iron, boolean sum) {
    steps = iron == AnalysisStep.MEASURED ? List.of() : List.of(iron);
    normalised = sum;
    refresh();
  }

  @Override
  protected EObject subject(Line line) {
    return line.analysis();
  }

  @Override
  protected List<Line> find() {
    List<Line> lines = new ArrayList<>();
    for (Analysis analysis : analyses.get()) {
      lines.add(new Line(analysis, List.of()));
      if (!steps.isEmpty()) {
        lines.add(new Line(analysis, steps));
      }
      if (normalised && !analysis.getComponents().isEmpty()) {
        List<AnalysisStep> all = new ArrayList<>(steps);
        all.add(AnalysisStep.NORMALISED);
        lines.add(new Line(analysis, all));
      }
    }
    return lines;
  }

  @Override
  protected Line begin() {
    Analysis made = ModelFactory.eINSTANCE.createAnalysis();
    analyses.get().add(made);
    return new Line(made, List.of());
  }

  @Override
  public boolean isEditable(int row, int column) {
    return super.isEditable(row, column) && (at(row) == null || at(row).isMeasured());
  }

  @Override
  public boolean canRemove(int row) {
    return super.canRemove(row) && at(row).isMeasured();
  }

  @Override
  public int depth(int row) {
    return at(row) == null || at(row).isMeasured() ? 0 : 1;
  }

  @Override
  protected List<EntryColumn<Line>> make() {
    List<EntryColumn<Line>> columns = new ArrayList<>();
    columns.add(on(Columns.<Analysis>text("name", 1.6, Literals.NAMED__NAME), this::title));
    columns.add(on(Columns.<Analysis, Sample>named("sample", 1, Literals.ANALYSIS__SAMPLE, Sample.class, samples), null));
    columns.add(on(Columns.<Analysis>text("replicate", 0.9, Literals.ANALYSIS__REPLICATE), null));
    columns.add(on(Columns.<Analysis, Material>word(desk(), "material", 0.9, Literals.ANALYSIS__MATERIAL, Material.values(), Material::word), null));
    columns.add(on(Columns.<Analysis, IronBasis>word(desk(), "ironBasis", 1, Literals.ANALYSIS__IRON_BASIS, IronBasis.values(), IronBasis::word), line ->
        Optional.ofNullable(line.steps().stream().reduce(line.analysis().getIronBasis(), (b, s) -> s.basis(b), (a, b) -> b)).map(IronBasis::word).map(desk().words()::said).orElse("")));
    symbols().forEach(s -> columns.add(component(s)));
    columns.add(EntryColumn.<Line>shown("sum", 0.8, line -> line.parts().isEmpty() ? "" : Columns.local(desk(), Printed.fixed(100 * AnalysisStep.total(line.parts()), 2))).doubting(this::outside));
    columns.add(total());
    for (String id : List.of("method", "instrument", "conditions", "standards", "accuracy")) {
      columns.add(on(Columns.<Analysis>text(id, 1.1, (org.eclipse.emf.ecore.EAttribute) Literals.ANALYSIS.getEStructuralFeature(id)), null));
    }
    columns.add(on(Columns.<Analysis>whole(desk(), "areas", 0.6, Literals.ANALYSIS__AREAS), null));
    columns.add(on(Columns.<Analysis>text("laboratory", 1.1, Literals.ANALYSIS__LABORATORY), null));
    columns.add(on(Columns.<Analysis>date("on", 1, Literals.ANALYSIS__ON), null));
    columns.add(EntryColumn.shown("converted", 1.6, line -> line.isMeasured() ? converted(line.analysis()) : ""));
    columns.add(EntryColumn.shown("publishable", 1.6, line -> line.isMeasured() ? publishable(line.analysis()) : ""));
    return columns;
  }

  private static String converted(Analysis analysis) {
    return String.join("; ", analysis.getComponents().stream().filter(c -> c.getPrintedAs() != null).map(c -> c.getSymbol() + ": " + c.getPrintedAs()).toList());
  }

  private String publishable(Analysis analysis) {
    List<String> missing = Publishable.missing(analysis).stream().map(id -> desk().words().of("analyses." + id)).toList();
    return missing.isEmpty() ? desk().words().of("publishable.yes") : desk().words().of("publishable.missing", String.join(", ", missing));
  }

  /** A column of the analysis as one of lines; other lines show what is given, or nothing. */
  private static EntryColumn<Line> on(EntryColumn<Analysis> c, java.util.function.Function<Line, String> others) {
    return new EntryColumn<>(c.id(), c.share(), line -> line.isMeasured() ? c.print().apply(line.analysis()) : others == null ? "" : others.apply(line),
        line -> c.edit().apply(line.analysis()), typed -> lift(c.read().apply(typed)), line -> c.choices().apply(line == null ? null : line.analysis()),
        line -> Optional.empty(), line -> true, c.isDate());
  }

  private static Entry<Line> lift(Entry<Analysis> entry) {
    return entry.isRead() ? Entry.of(line -> entry.change().accept(line.analysis())) : Entry.wrong(entry.complaint());
  }

  private String title(Line line) {
    String name = String.join(", ", line.steps().stream().map(s -> desk().words().of("step." + s.name())).toList());
    boolean last = line.steps().contains(AnalysisStep.NORMALISED);
    return last ? name + desk().words().of("step.original", Printed.fixed(100 * original(line.analysis()), 1)) : name;
  }

  private static double original(Analysis analysis) {
    return analysis.getTotal() == null ? AnalysisStep.total(AnalysisStep.parts(analysis)) : analysis.getTotal();
  }

  private List<String> symbols() {
    Set<String> symbols = new LinkedHashSet<>(Oxides.USUAL.stream().filter(s -> !Set.of("SO3", "BaO", "V2O5", "Cr2O3").contains(s)).toList());
    analyses.get().forEach(a -> a.getComponents().forEach(c -> symbols.add(String.valueOf(c.getSymbol()))));
    return symbols.stream().sorted(Oxides.ORDER).toList();
  }

  private EntryColumn<Line> component(String symbol) {
    Variable variable = new Variable("", symbol, "Chemistry", ValueType.NUMBER, Quantity.FRACTION, PERCENT, symbol.equals("LOI") ? LARGEST_GAIN : 0, 1, Set.of(),
        List.of(), false, "", "", "");
    return EntryColumn.<Line>typed(symbol, 0.7, line -> printed(line, symbol), typed -> {
      Entry<Line> read = Columns.value(desk(), variable, typed, (line, change) -> put(line.analysis(), symbol, change));
      boolean below = Numbers.parse(typed, desk().decimal().get()).filter(n -> n / 100 < (symbol.equals("LOI") ? LARGEST_GAIN : 0)).isPresent();
      return below ? Entry.wrong("analysis.negative", symbol + " is negative", "check it against the laboratory's report; write < and the limit, or n.d.") : read;
    }).editing(line -> typed(line, symbol)).doubting(line -> find(line.analysis(), symbol).flatMap(c -> Columns.odd(c, variable)));
  }

  private static Optional<Component> find(Analysis analysis, String symbol) {
    return analysis.getComponents().stream().filter(c -> symbol.equals(c.getSymbol())).findFirst();
  }

  private static String typed(Line line, String symbol) {
    return find(line.analysis(), symbol).map(c -> c.getTyped() == null ? printed(line, symbol) : c.getTyped()
        + (c.getUnit() == null || c.getUnit().equals("%") ? "" : " " + c.getUnit())).orElse("");
  }

  private static String printed(Line line, String symbol) {
    Amount amount = line.parts().get(symbol);
    if (amount == null) {
      return "";
    }
    return switch (amount.kind()) {
      case EXACT -> Printed.fixed(amount.value() * 100, 2);
      case BELOW_LIMIT -> "<" + Printed.number(amount.value() * 100);
      default -> Printed.amount(amount, PERCENT);
    };
  }

  private static void put(Analysis analysis, String symbol, java.util.function.Consumer<daubline.model.Reading> change) {
    Optional<Component> old = find(analysis, symbol);
    if (change == null) {
      old.ifPresent(c -> EcoreUtil.delete(c, true));
      return;
    }
    Component component = old.orElseGet(() -> {
      Component made = ModelFactory.eINSTANCE.createComponent();
      made.setSymbol(symbol);
      analysis.getComponents().add(made);
      return made;
    });
    change.accept(component);
    component.setVariable(null);
    component.setPrintedAs(null);
  }

  /** The total as the laboratory printed it. */
  private EntryColumn<Line> total() {
    return EntryColumn.<Line>typed("total", 0.8, line -> line.analysis().getTotal() == null ? "" : Columns.local(desk(), Printed.fixed(100 * line.analysis().getTotal(), 2)), typed -> {
      Optional<Double> number = Numbers.parse(typed, desk().decimal().get()).filter(n -> n >= 0);
      return typed.isBlank() || number.isPresent() ? Entry.of(line -> {
        line.analysis().setTotal(number.map(n -> n / 100).orElse(null));
        line.analysis().setTotalTyped(typed.isBlank() ? null : typed);
      }) : Entry.wrong(Numbers.complaint(typed, desk().decimal().get()));
    });
  }

  /** The limits of a total that the study sets, or the usual ones. */
  public double limit(String key) {
    return desk().session().study().getSettings().stream().filter(s -> key.equals(s.getKey())).map(Setting::getValue)
        .flatMap(v -> Numbers.parse(v, daubline.base.DecimalSign.POINT).stream()).findFirst().orElse(key.equals(LOW) ? USUAL_LOW : USUAL_HIGH);
  }

  private Optional<Finding> outside(Line line) {
    Map<String, Amount> parts = AnalysisStep.parts(line.analysis());
    double total = original(line.analysis());
    boolean whole = parts.containsKey("SiO2") && parts.size() > 3 && line.isMeasured();
    return whole && (total < limit(LOW) || total > limit(HIGH)) ? Optional.of(Finding.warning("analysis.total", "", "the total is " + Printed.fixed(total * 100, 1)
        + " %, outside " + Printed.number(100 * limit(LOW)) + "–" + Printed.number(100 * limit(HIGH)) + " %",
        "check the iron basis, loss on ignition and missing oxides; the measured values stay, normalised ones are shown below")) : Optional.empty();
  }

  /** Of all components the same is asked. */
  @Override
  public String about(int column) {
    String own = super.about(column);
    return own.isEmpty() ? desk().words().of("analyses.component.about", columns().get(column)) : own;
  }

  /** Oxides head their columns by their formula. */
  @Override
  public String heading(int column) {
    return desk().words().orElse("analyses." + columns().get(column), columns().get(column));
  }
}
