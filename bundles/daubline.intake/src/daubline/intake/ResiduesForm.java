package daubline.intake;

import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Citation;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.ResidueClass;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The form of residue masses: one class of residue of one sheet or trial a row. */
final class ResiduesForm implements Form {

  @Override
  public Target target() {
    return Target.RESIDUES;
  }

  @Override
  public String explanation() {
    return "One row a class of residue of one evidence sheet or one trial. “not weighed” is written where it was there "
        + "and not put on a scale; 0 means "
        + "weighed and nothing found. A row is recognised again by its id, or by sheet, class, citation and page.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id()));
    columns.addAll(Shared.sheet());
    columns.add(FormColumn.text("class", "Residue class, by name or id: tapped slag, furnace slag, vitrified lining …",
        "Tapped slag").must());
    columns.add(Shared.mass("mass", "Mass of the class: a number, “≥ 12”, “not weighed”.").must());
    columns.add(FormColumn.of("count", Content.WHOLE, "Number of pieces.", "14"));
    columns.addAll(Shared.origin());
    columns.add(Shared.note());
    return columns;
  }

  @Override
  public String key(Row row) {
    return row.has("id") ? row.key("id") : row.key("series", "trial", "site", "context", "sheet", "class", "citation", "page");
  }

  @Override
  public void write(Row row, Draft draft) {
    Finder finder = new Finder(row, draft);
    Optional<ResidueMass> named = draft.named(row, ResidueMass.class);
    ResidueClass kind = finder.residueClass();
    row.must("mass");
    Optional<ReadValue> mass = row.value("mass");
    Sheet sheet = named.map(m -> (Sheet) m.eContainer()).orElseGet(finder::sheet);
    if (sheet == null || kind == null || mass.isEmpty() || row.isFaulty()) {
      return;
    }
    ResidueMass residue = named.or(() -> known(row, sheet, kind, finder.citation(), mass.get())).orElseGet(() -> {
      ResidueMass made = draft.subject(row, ModelFactory.eINSTANCE.createResidueMass());
      sheet.getResidues().add(made);
      return made;
    });
    Tally tally = draft.tally();
    tally.set(residue, Literals.RESIDUE_MASS__RESIDUE_CLASS, kind);
    tally.set(residue, Literals.RESIDUE_MASS__COUNT, row.whole("count"));
    tally.put(residue, mass.get());
    Shared.origin(row, draft, residue, finder);
    tally.set(residue, Literals.READING__NOTE, row.orNull("note"));
  }

  private static Optional<ResidueMass> known(Row row, Sheet sheet, ResidueClass kind, Citation citation, ReadValue mass) {
    if (row.has("id")) {
      return Optional.empty();
    }
    List<ResidueMass> same = sheet.getResidues().stream().filter(r -> r.getResidueClass() == kind)
        .filter(r -> Shared.sameOrigin(r, citation, row.orNull("page"))).toList();
    return Optional.ofNullable(Shared.matching(same, mass.amount()));
  }
}
