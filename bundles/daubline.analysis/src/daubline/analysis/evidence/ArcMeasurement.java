package daubline.analysis.evidence;

import daubline.base.Amount;
import daubline.base.AmountReader;
import daubline.base.DecimalSign;
import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.HowGot;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.process.ArcDiameter;
import daubline.engine.stats.Uncertain;
import daubline.model.Claim;
import daubline.model.ClaimInput;
import daubline.model.ModelFactory;
import daubline.model.Sheet;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two things measured on a surviving arc, as typed, and the diameter that follows. It becomes a claim that keeps what was
 * typed and the formula.
 *
 * @param way what was measured
 * @param first the chord or the length of the arc
 * @param second the rise or the angle
 * @param result the diameter in metres
 */
public record ArcMeasurement(ArcDiameter.Way way, Input first, Input second, ArcDiameter result) {

  private static final long KEY = 1973;

  /**
   * One thing measured.
   *
   * @param symbol its sign in the formula
   * @param typed the value as typed, without unit
   * @param unit its unit
   * @param amount the canonical value
   */
  public record Input(String symbol, String typed, Unit unit, Amount amount) {

    /** As typed, with its unit. */
    public String text() {
      return typed + "\u00A0" + unit.symbol();
    }

    private Uncertain uncertain() {
      return amount.kind() == ValueKind.RANGE ? Uncertain.rectangular(amount.low(), amount.high()) : Uncertain.normal(amount.value(), amount.sigmaOr(0));
    }
  }

  /**
   * What came of reading what was typed.
   *
   * @param measurement the measurement; empty when there is an error
   * @param findings errors, or what should be known about the result
   */
  public record Outcome(Optional<ArcMeasurement> measurement, List<Finding> findings) {
  }

  /**
   * Reads what was typed.
   *
   * @param first chord or length of the arc; a number, one with ± and its standard uncertainty, or a range; millimetres
   *     when no unit stands after it
   * @param second rise, or angle in degrees
   */
  public static Outcome read(ArcDiameter.Way way, String first, String second, DecimalSign decimal) {
    List<Finding> findings = new ArrayList<>();
    Optional<Input> one = input(way.first(), first, Quantity.LENGTH, decimal, findings);
    Optional<Input> two = input(way.second(), second, way.isByAngle() ? Quantity.ANGLE : Quantity.LENGTH, decimal, findings);
    if (one.isEmpty() || two.isEmpty()) {
      return new Outcome(Optional.empty(), findings);
    }
    ArcMeasurement made = new ArcMeasurement(way, one.get(), two.get(), ArcDiameter.of(way, one.get().uncertain(), two.get().uncertain(), KEY));
    made.judge(findings);
    return new Outcome(Optional.of(made), findings);
  }

  private static Optional<Input> input(String symbol, String text, Quantity quantity, DecimalSign decimal, List<Finding> findings) {
    EnteredText parts = EnteredText.split(text, quantity);
    Unit unit = Units.find(quantity, parts.unit().isEmpty() ? quantity == Quantity.ANGLE ? "°" : "mm" : parts.unit()).orElseThrow();
    Typed typed = new AmountReader(decimal).number(parts.value(), unit);
    if (!typed.isRead()) {
      findings.add(typed.finding().at(symbol));
      return Optional.empty();
    }
    Amount amount = typed.amount();
    boolean usable = amount.kind() == ValueKind.EXACT || amount.kind() == ValueKind.PLUS_MINUS || amount.kind() == ValueKind.RANGE;
    boolean circle = quantity == Quantity.ANGLE && !(amount.value() < 360);
    if (!usable || !(amount.value() > 0) || circle) {
      findings.add(Finding.error("arc.input", symbol, "“" + text.strip() + "” gives no diameter",
          circle ? "write an angle below 360°" : "write a number above zero, such as 380 ± 5 mm, or a range"));
      return Optional.empty();
    }
    return Optional.of(new Input(symbol, parts.value(), unit, amount));
  }

  private void judge(List<Finding> findings) {
    for (Input input : List.of(first, second)) {
      if (input.amount().kind() == ValueKind.EXACT) {
        findings.add(Finding.note("arc.exact", input.symbol(), "no uncertainty is stated; the diameter takes it for exact",
            "write how far off the measurement may be, such as " + input.typed() + " ± 3"));
      }
    }
    if (Double.isInfinite(result.high())) {
      findings.add(Finding.warning("arc.open", way.second(), "within its uncertainty the arc may be straight",
          "the claim states “at least”; measure a longer arc"));
    } else if (!result.isFirstOrder()) {
      findings.add(Finding.warning("arc.lopsided", way.second(), "the arc is too flat for ±",
          "the claim states the range that holds 95 %"));
    }
  }

  /** The diameter as a claim states it: with ±, or as the range that holds 95 %, or as at least. */
  public Amount amount() {
    if (Double.isInfinite(result.high())) {
      return Amount.atLeast(result.low());
    }
    if (!result.isFirstOrder()) {
      return Amount.range(result.low(), result.high());
    }
    return result.sigma() > 0 ? Amount.plusMinus(result.diameter(), result.sigma()) : Amount.exact(result.diameter());
  }

  /** The formula, what stands for what, the result and what each input adds to its uncertainty, each on a line. */
  public List<String> lines() {
    Unit mm = Units.find(Quantity.LENGTH, "mm").orElseThrow();
    List<String> lines = new ArrayList<>(List.of(way.formula(), first.symbol() + " = " + first.text() + ", " + second.symbol() + " = " + second.text(),
        "D = " + Printed.plusMinus(mm.fromCanonical(result.diameter()), mm.fromCanonical(result.sigma())) + " mm, first order"));
    if (result.sigma() > 0) {
      lines.add("of the uncertainty: " + first.symbol() + " " + Printed.millimetres(result.parts()[0], 2) + ", " + second.symbol() + " "
          + Printed.millimetres(result.parts()[1], 2) + ", squares added");
      lines.add("95 % of drawn arcs: " + Printed.number(mm.fromCanonical(result.low())) + " to " + (Double.isInfinite(result.high()) ? "no limit"
          : Printed.millimetres(result.high())));
    }
    lines.add("the claim: " + Printed.withUnit(amount(), mm));
    return lines;
  }

  /** The variables that are diameters of remains. */
  public static List<Variable> diameters(Variables variables) {
    return variables.all().stream().filter(v -> v.type() == ValueType.NUMBER && v.quantity() == Quantity.LENGTH && v.isAt(Variable.Place.REMAINS))
        .filter(v -> v.id().contains("diameter") || v.id().endsWith("_bore")).toList();
  }

  /**
   * Enters the diameter as a claim beside those that are there, as one undoable change.
   *
   * @param label the name of the change
   */
  public Claim enter(StudySession session, Sheet sheet, Variable variable, String label) {
    Claim[] claim = new Claim[1];
    session.edit(label, () -> claim[0] = claim(sheet, variable));
    return claim[0];
  }

  /** Adds the diameter to a sheet as a claim; for use inside a change of the study. */
  public Claim claim(Sheet sheet, Variable variable) {
    Claim claim = ModelFactory.eINSTANCE.createClaim();
    claim.setVariable(variable.id());
    Readings.put(claim, amount());
    claim.setHow(HowGot.CALCULATED);
    claim.setFormula(way.formula());
    claim.getInputs().add(kept(first));
    claim.getInputs().add(kept(second));
    sheet.getClaims().add(claim);
    return claim;
  }

  private static ClaimInput kept(Input input) {
    ClaimInput kept = ModelFactory.eINSTANCE.createClaimInput();
    kept.setSymbol(input.symbol());
    Readings.put(kept, input.amount());
    kept.setTyped(input.typed());
    kept.setUnit(input.unit().symbol());
    return kept;
  }
}
