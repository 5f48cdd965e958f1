package daubline.intake;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sheet;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The form of claims: one cited statement about one property of remains a row. */
final class ClaimsForm implements Form {

  @Override
  public Target target() {
    return Target.CLAIMS;
  }

  @Override
  public String explanation() {
    return "One row a statement about one property, with where it was read. A row is recognised again by its id, or when "
        + "sheet, variable, citation, page and "
        + "value are the same. A row with another value is another claim: it is put beside the first, never over it. To "
        + "correct a claim, give its id.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id()));
    columns.addAll(Shared.sheet());
    columns.add(FormColumn.text("region", "Region of the site.", "North dale"));
    columns.add(FormColumn.text("country", "Country of the site.", "England"));
    columns.add(FormColumn.text("period", "Period of the context.", "Late Iron Age"));
    columns.add(FormColumn.text("feature", "What the feature is.", "furnace base"));
    columns.add(FormColumn.text("variable", "What the statement is about: id or name of a variable.",
        "base_internal_diameter").must());
    columns.add(new FormColumn("value", Content.VALUE, true, List.of(),
        "The value as printed: 255, 255 ± 10, 240–270, ≥ 38, 38+, present, absent, "
        + "not preserved, not looked for, not recorded, or a word of the variable's list.", "240–270", null));
    columns.add(FormColumn.of("uncertainty", Content.NUMBER,
        "One standard uncertainty in the same unit, when the value does not hold it.", "10"));
    columns.add(FormColumn.text("unit", "Unit as printed; the variable's usual unit when empty.", "mm"));
    columns.add(FormColumn.word("kind", Shared.words(ValueKind.values(), ValueKind::word),
        "What kind of statement it is, when the value does not show it."));
    columns.addAll(Shared.origin());
    columns.add(FormColumn.plain("preservation_limit", Quantity.LENGTH, "mm", 0, 10,
        "Height up to which the remains could have shown the property; "
            + "what could not survive never counts against a trial.", "180"));
    columns.add(Shared.note());
    return columns;
  }

  @Override
  public String key(Row row) {
    return row.has("id") ? row.key("id")
        : row.key("series", "trial", "site", "context", "sheet", "variable", "value", "uncertainty", "unit", "kind",
        "citation", "page", "reader");
  }

  @Override
  public void write(Row row, Draft draft) {
    Finder finder = new Finder(row, draft);
    Optional<Claim> named = draft.named(row, Claim.class);
    Variable variable = variable(row, draft.variables());
    Optional<ReadValue> value = variable == null ? Optional.empty() : value(row, variable);
    Sheet sheet = named.map(c -> (Sheet) c.eContainer()).orElseGet(finder::sheet);
    if (sheet == null || value.isEmpty() || row.isFaulty()) {
      return;
    }
    describe(row, draft, sheet);
    Claim claim = named.or(() -> known(row, sheet, variable, finder.citation(), value.get()))
        .orElseGet(() -> add(row, draft, sheet, variable, value.get()));
    Tally tally = draft.tally();
    tally.set(claim, Literals.READING__VARIABLE, variable.id());
    tally.put(claim, value.get());
    Shared.origin(row, draft, claim, finder);
    row.value("preservation_limit").ifPresent(v -> tally.set(claim, Literals.CLAIM__PRESERVATION_LIMIT,
        v.amount().isNumber() ? v.amount().value() : null));
    tally.set(claim, Literals.READING__NOTE, row.orNull("note"));
  }

  private static Variable variable(Row row, Variables variables) {
    String wanted = row.must("variable");
    Optional<Variable> known = Families.variable(wanted, variables);
    if (known.isEmpty() && !wanted.isEmpty()) {
      row.error("variable.unknown", "variable", "there is no variable “" + wanted + "”",
          Nearest.remedy(wanted, variables.all().stream().map(Variable::id).toList(),
          "choose one of the catalogue, or add your own to the study first"));
    }
    return known.orElse(null);
  }

  private static Optional<ReadValue> value(Row row, Variable variable) {
    ValueKind kind = row.word("kind", ValueKind.class, ValueKind::word);
    Optional<Unit> unit = unit(row, variable);
    String text = row.has("value") ? row.text("value") : kind == null || kind.isNumber() ? row.must("value") : kind.word();
    if (text.isEmpty() || unit.isEmpty() || row.isFaulty()) {
      return Optional.empty();
    }
    Optional<ReadValue> read = row.value("value", composed(row, text, kind), variable, unit.get());
    read.filter(r -> kind != null && r.amount().kind() != kind).ifPresent(r -> row.error("kind.conflict", "kind",
        "the value “" + text + "” reads as “" + r.amount().kind().word() + "”, the kind says “" + kind.word() + "”",
        "make the two agree, or leave the kind empty"));
    return read;
  }

  private static Optional<Unit> unit(Row row, Variable variable) {
    if (variable.type() != ValueType.NUMBER || !row.has("unit")) {
      return Optional.of(variable.unit());
    }
    Optional<Unit> unit = Units.find(variable.quantity(), row.text("unit"));
    if (unit.isEmpty()) {
      row.error("unit.unknown", "unit", "“" + row.text("unit") + "” is no unit of " + variable.name(),
          "use one of: " + String.join(", ", Units.of(variable.quantity()).stream().map(Unit::symbol)
          .filter(s -> !s.isEmpty()).toList()));
    }
    return unit;
  }

  /** The value with what the columns kind and uncertainty add to a bare number. */
  private static String composed(Row row, String text, ValueKind kind) {
    boolean bare = text.matches("[-\u2212]?[\\d.,]+");
    if (bare && row.has("uncertainty")) {
      return text + " ± " + row.text("uncertainty");
    }
    if (!bare || kind == null) {
      return text;
    }
    return switch (kind) {
      case AT_LEAST -> "≥ " + text;
      case AT_MOST -> "≤ " + text;
      case BELOW_LIMIT -> "< " + text;
      default -> text;
    };
  }

  private static void describe(Row row, Draft draft, Sheet sheet) {
    if (sheet instanceof EvidenceSheet evidence) {
      draft.tally().set(evidence, Literals.EVIDENCE_SHEET__FEATURE, row.orNull("feature"));
      draft.tally().set(evidence.eContainer(), Literals.CONTEXT__PERIOD, row.orNull("period"));
      draft.tally().set(evidence.eContainer().eContainer(), Literals.SITE__REGION, row.orNull("region"));
      draft.tally().set(evidence.eContainer().eContainer(), Literals.SITE__COUNTRY, row.orNull("country"));
    }
  }

  private static Optional<Claim> known(Row row, Sheet sheet, Variable variable, Citation citation, ReadValue value) {
    return row.has("id") ? Optional.empty()
        : of(sheet, variable).filter(c -> c.getKind() != null && Readings.amount(c).equals(value.amount()))
            .filter(c -> Shared.sameOrigin(c, citation, row.orNull("page")))
            .filter(c -> !row.has("reader") || c.getBy() == null
            || Heading.key(row.text("reader")).equals(Heading.key(String.valueOf(c.getBy().getName()))))
            .findFirst();
  }

  private static Stream<Claim> of(Sheet sheet, Variable variable) {
    return sheet.getClaims().stream().filter(c -> variable.id().equals(c.getVariable()));
  }

  private static Claim add(Row row, Draft draft, Sheet sheet, Variable variable, ReadValue value) {
    List<Amount> others = of(sheet, variable).map(Readings::amount).filter(a -> !a.equals(value.amount())).toList();
    if (!others.isEmpty()) {
      row.note("claim.beside", "value", "it is put beside " + others.size() + " other claim(s) about " + variable.name()
          + ", such as "
          + Printed.withUnit(others.get(0), variable.unit()),
          "nothing to do; a summary is used only when somebody picks one and says why");
    }
    Claim made = draft.subject(row, ModelFactory.eINSTANCE.createClaim());
    sheet.getClaims().add(made);
    return made;
  }
}
