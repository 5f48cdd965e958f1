package daubline.intake;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.OxideFactors;
import daubline.base.Oxides;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sample;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The form of chemical analyses: one row an analysis with a column an oxide or element, or one row a component. */
final class AnalysesForm implements Form {

  private static final String TOTAL = "total";
  /** Slag rich in FeO gains oxygen on ignition, by a ninth of its FeO at most: the loss is then negative. */
  private static final double LARGEST_GAIN = -0.12;

  @Override
  public Target target() {
    return Target.ANALYSES;
  }

  @Override
  public String explanation() {
    return "One row an analysis, one column an oxide or element; or one row a component, with the columns component and "
        + "value. “<0.05” is below a known limit, "
        + "n.d. not detected, n.a. not analysed, tr a trace, – not reported, 0 a measured zero; they stay different, and "
        + "an empty cell says nothing. A row is "
        + "recognised again by its id, or by name and what it is an analysis of.";
  }

  @Override
  public boolean isOfLaboratories() {
    return true;
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id(), FormColumn.text("name",
        "Name of the analysis, as the laboratory calls it.", "T4-tap-1").must()));
    columns.addAll(Shared.sheet());
    columns.addAll(List.of(
        FormColumn.text("lot", "Instead of site or trial: the lot that was analysed.", "Bog ore 2031, roasted"),
        FormColumn.text("sample", "The sample, by name or id; a new name adds one to the trial.", "T4-S2"),
        FormColumn.text("replicate", "Name that repeated measurements of one sample share.", ""),
        FormColumn.word("material", Shared.words(Material.values(), Material::word), "What was analysed."),
        FormColumn.text("specimen", "What exactly: slag class, part, bulk or spot.", "tapped slag, bulk"),
        FormColumn.text("method", "Method.", "WD-XRF on fused beads"), FormColumn.text("instrument",
        "Instrument and settings.", ""),
        FormColumn.text("standards", "Standards, measured against certified.", ""), FormColumn.text("laboratory",
        "Laboratory.", ""),
        FormColumn.of("date", Content.DATE, "Date of the analysis.", "2031-10-02"),
        FormColumn.of("areas", Content.WHOLE, "Number of areas or spots that were averaged.", "5"),
        FormColumn.word("iron_basis", Shared.words(IronBasis.values(), IronBasis::word), "How iron is reported."),
        FormColumn.text("citation", "Key of the citation.", "neumann-d6"), FormColumn.text("page", "Page or table.",
        "table 2"), Shared.note(),
        share(TOTAL, "Total as printed; never recalculated."),
        FormColumn.text("component", "For one row a component: its formula, or Total.", "SiO2"),
        share("value", "For one row a component: its value.")));
    Oxides.USUAL.forEach(symbol -> columns.add(component(symbol)));
    return columns;
  }

  @Override
  public List<FormColumn> template(Variables variables) {
    return columns(variables).stream().filter(c -> !c.id().equals("component") && !c.id().equals("value")).toList();
  }

  private static FormColumn share(String id, String meaning) {
    return FormColumn.plain(id, Quantity.FRACTION, "%", 0, 1.2, meaning, "23.85");
  }

  private static FormColumn component(String symbol) {
    String unit = Formulas.isOxide(symbol) || symbol.equals("Fe") ? "%" : "mg/kg";
    double lowest = symbol.equals("LOI") ? LARGEST_GAIN : 0;
    return FormColumn.plain(symbol, Quantity.FRACTION, unit, lowest, 1, "Mass share of " + symbol
        + "; write another unit into the heading.", "<0.05");
  }

  @Override
  public Optional<FormColumn> column(Heading heading, Variables variables) {
    Optional<FormColumn> fixed = Form.super.column(heading, variables);
    return fixed.or(() -> Formulas.symbol(heading.name()).map(AnalysesForm::component))
        .or(() -> LabColumns.meant(heading).flatMap(id -> columns(variables).stream().filter(c -> c.id().equals(id)).findFirst()));
  }

  @Override
  public String key(Row row) {
    String own = row.has("id") ? row.key("id") : row.key("series", "trial", "lot", "site", "context", "sheet", "name");
    return row.has("component") ? own + "|" + row.key("component") : own;
  }

  @Override
  public void write(Row row, Draft draft) {
    Finder finder = new Finder(row, draft);
    String name = row.must("name");
    Optional<Analysis> named = draft.named(row, Analysis.class);
    List<Analysis> home = named.isPresent() || name.isEmpty() ? List.of() : home(row, finder);
    if (name.isEmpty() || home == null || row.isFaulty()) {
      return;
    }
    Analysis analysis = named.or(() -> home.stream().filter(a -> !row.has("id") && name.equals(a.getName())).findFirst())
        .orElseGet(() -> {
      Analysis made = draft.subject(row, ModelFactory.eINSTANCE.createAnalysis());
      home.add(made);
      return made;
    });
    describe(row, draft, finder, analysis, name);
    components(row, draft.tally(), analysis);
    ironBasis(row, draft.tally(), analysis);
    if (draft.tally().isAdded() || !draft.tally().changes().isEmpty()) {
      draft.tally().set(analysis, Literals.ANALYSIS__FILE, draft.rawFile());
    }
  }

  /** The list the analysis belongs to; null with an error when the row names none. */
  private static List<Analysis> home(Row row, Finder finder) {
    if (row.has("lot")) {
      Lot lot = finder.lot("lot");
      return lot == null ? null : lot.getAnalyses();
    }
    if (row.has("trial")) {
      Trial trial = finder.trial("trial");
      return trial == null ? null : trial.getAnalyses();
    }
    if (!row.has("site") && !row.has("sheet")) {
      row.error("cell.empty", "trial", "the row says neither trial nor lot nor site and sheet",
          "fill in what was analysed, or set it for all rows by set:trial=…");
      return null;
    }
    return Optional.ofNullable(finder.sheet()).map(s -> (List<Analysis>) s.getAnalyses()).orElse(null);
  }

  private static void describe(Row row, Draft draft, Finder finder, Analysis analysis, String name) {
    Tally tally = draft.tally();
    tally.set(analysis, Literals.NAMED__NAME, name);
    tally.set(analysis, Literals.NAMED__NOTE, row.orNull("note"));
    tally.set(analysis, Literals.ANALYSIS__MATERIAL, row.word("material", Material.class, Material::word));
    tally.set(analysis, Literals.ANALYSIS__REPLICATE, row.orNull("replicate"));
    tally.set(analysis, Literals.ANALYSIS__SPECIMEN, row.orNull("specimen"));
    tally.set(analysis, Literals.ANALYSIS__METHOD, row.orNull("method"));
    tally.set(analysis, Literals.ANALYSIS__INSTRUMENT, row.orNull("instrument"));
    tally.set(analysis, Literals.ANALYSIS__STANDARDS, row.orNull("standards"));
    tally.set(analysis, Literals.ANALYSIS__LABORATORY, row.orNull("laboratory"));
    tally.set(analysis, Literals.ANALYSIS__ON, row.date("date"));
    tally.set(analysis, Literals.ANALYSIS__AREAS, row.whole("areas"));
    tally.set(analysis, Literals.ANALYSIS__CITATION, finder.citation());
    tally.set(analysis, Literals.ANALYSIS__PAGE, row.orNull("page"));
    if (row.has("sample")) {
      tally.set(analysis, Literals.ANALYSIS__SAMPLE, sample(row, finder, analysis));
    }
  }

  private static Sample sample(Row row, Finder finder, Analysis analysis) {
    if (analysis.eContainer() instanceof Trial trial) {
      return finder.brought(trial.getSamples(), "sample", ModelFactory.eINSTANCE::createSample);
    }
    row.warning("sample.place", "sample", "samples are kept with trials; “" + row.text("sample") + "” is not taken over",
        "write it into “specimen” or “note”");
    return null;
  }

  private static void components(Row row, Tally tally, Analysis analysis) {
    if (row.has("component")) {
      single(row, tally, analysis);
    }
    for (Bound column : row.values()) {
      String id = column.column().id();
      if (id.equals(TOTAL)) {
        row.joinedValue(column).ifPresent(v -> total(tally, analysis, v));
      } else if (!id.equals("value")) {
        row.joinedValue(column).ifPresent(v -> put(tally, analysis, id, v, row.oxide(column)));
      }
    }
  }

  private static void single(Row row, Tally tally, Analysis analysis) {
    Optional<String> symbol = Formulas.symbol(row.text("component"));
    boolean total = Heading.key(row.text("component")).matches("(total|sum)");
    if (symbol.isEmpty() && !total) {
      row.error("component.unknown", "component", "“" + row.text("component") + "” is no formula",
          "write it as SiO2, Al2O3, Cr, LOI or Total");
      return;
    }
    row.value("value").ifPresent(v -> {
      if (total) {
        total(tally, analysis, v);
      } else {
        put(tally, analysis, symbol.get(), v, Optional.empty());
      }
    });
  }

  private static void total(Tally tally, Analysis analysis, ReadValue value) {
    if (value.amount().isNumber() && !Objects.equals(analysis.getTotal(), value.amount().value())) {
      tally.set(analysis, Literals.ANALYSIS__TOTAL, value.amount().value());
      tally.set(analysis, Literals.ANALYSIS__TOTAL_TYPED, value.typed());
    }
  }

  /** Puts a value under its formula, or under the oxide that is asked for; then what was printed is kept beside it. */
  private static void put(Tally tally, Analysis analysis, String element, ReadValue value, Optional<String> oxide) {
    String symbol = oxide.orElse(element);
    Component component = analysis.getComponents().stream().filter(c -> symbol.equals(c.getSymbol())).findFirst()
        .orElseGet(() -> {
      Component made = tally.fresh(ModelFactory.eINSTANCE.createComponent());
      made.setSymbol(symbol);
      analysis.getComponents().add(made);
      tally.partAdded("added: " + symbol + " " + value.typed());
      return made;
    });
    tally.put(component, oxide.map(o -> converted(element, o, value)).orElse(value));
    oxide.ifPresent(o -> tally.set(component, Literals.COMPONENT__PRINTED_AS, printed(element, o, value)));
  }

  private static ReadValue converted(String element, String oxide, ReadValue value) {
    double factor = OxideFactors.factor(element, oxide).orElseThrow();
    Amount a = value.amount();
    Amount amount = a.isNumber() ? new Amount(a.kind(), a.value() * factor, a.low() * factor, a.high() * factor, a.sigma() * factor, a.category()) : a;
    // nobody typed the converted number; what was typed stands in what was printed
    return new ReadValue(amount, a.isNumber() ? null : value.typed(), null);
  }

  private static String printed(String element, String oxide, ReadValue value) {
    String factor = Printed.fixed(OxideFactors.factor(element, oxide).orElseThrow(), 4);
    return (element + " " + value.typed() + " " + (value.unit() == null ? "" : value.unit())).strip() + " × " + factor + " (" + OxideFactors.SOURCE + ")";
  }

  /** Takes the basis that a person or a heading states; total iron that is asked for as an oxide is then given as that. */
  private static void ironBasis(Row row, Tally tally, Analysis analysis) {
    IronBasis stated = row.word("iron_basis", IronBasis.class, IronBasis::word);
    Optional<IronBasis> inHeading = row.headings().stream().map(Formulas::ironBasis).flatMap(Optional::stream).findFirst();
    IronBasis basis = stated == null ? inHeading.orElse(null) : stated;
    Optional<String> oxide = row.values().stream().filter(b -> b.column().id().equals("Fe")).map(row::oxide).flatMap(Optional::stream).findFirst();
    boolean asOxide = basis == IronBasis.FE && oxide.isPresent();
    tally.set(analysis, Literals.ANALYSIS__IRON_BASIS, !asOxide ? basis : oxide.get().equals("Fe2O3") ? IronBasis.FE2O3 : IronBasis.FEO);
  }
}
