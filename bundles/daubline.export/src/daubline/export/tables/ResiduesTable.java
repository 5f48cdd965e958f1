package daubline.export.tables;

import daubline.analysis.EvidenceData;
import daubline.analysis.Recovered;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.RecoveredTotal;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** Residues by class: excavated sheets first, then trials. */
public final class ResiduesTable extends Spec {

  /** The table. */
  public ResiduesTable() {
    super("residues", "Residues by Class", "Mass and number of the residues of each class, excavated and of the trials. Not weighed is not zero.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.words("origin", "Origin"), Column.text("sheet", "Sheet"), Column.words("class", "Residue class"),
        Column.number("mass", "Mass", "kg"), Column.number("share", "Share of weighed", "%"), Column.number("pieces", "Pieces", ""),
        Column.number("recovered", "Share recovered", "%"), Column.words("reads", "Reads"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    results.snapshot().sheets().stream().map(EvidenceData::sheet).forEach(s -> add(rows, "excavated", s));
    results.snapshot().trials().stream().map(TrialData::found).forEach(s -> add(rows, "trial", s));
    return rows;
  }

  private static void add(List<List<Cell>> rows, String origin, SheetData sheet) {
    double total = sheet.residues().stream().filter(r -> r.mass().isNumber()).mapToDouble(r -> r.mass().value()).sum();
    for (ClassMass residue : sheet.residues()) {
      double recovered = Double.isNaN(residue.samplingFraction()) ? sheet.samplingFraction() : residue.samplingFraction();
      rows.add(List.of(Cell.text(origin), Cell.text(sheet.name()), Cell.text(residue.name()),
          Cell.amount(residue.mass(), Units.canonical(Quantity.MASS), residue.trail()),
          residue.mass().isNumber() && total > 0 ? Cell.fixed(residue.mass().value() / total * 100, 1) : Cell.EMPTY,
          residue.pieces() < 0 ? Cell.EMPTY : Cell.fixed(residue.pieces(), 0), Cell.fixed(recovered * 100, 0),
          Cell.text(reads(RecoveredTotal.stated(residue.mass(), recovered, true, residue.doubtful())))));
    }
    RecoveredTotal all = Recovered.of(sheet, origin.equals("trial"));
    if (all.total().isNumber()) {
      Amount pieces = Recovered.pieces(sheet, origin.equals("trial"));
      Trail trail = new Trail("Sum of the classes weighed", all.text(), "", sheet.residues().stream().map(ClassMass::trail).toList());
      rows.add(List.of(Cell.text(origin), Cell.text(sheet.name()), Cell.text("All classes weighed"), Cell.amount(all.total(), Units.canonical(Quantity.MASS), trail),
          Cell.EMPTY, pieces.isNumber() ? Cell.amount(pieces, Units.canonical(Quantity.NUMBER), trail) : Cell.EMPTY, Cell.fixed(all.share() * 100, 0), Cell.text(all.text())));
    }
  }

  /** A class of which a known share was recovered, or that was read with low confidence, is a lower limit too; of others the number says all. */
  private static String reads(RecoveredTotal mass) {
    return mass.isLeast() ? mass.text() : "";
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("At least: only a share was recovered, that share is not stated of an excavated deposit, the reading is of low confidence, or classes were found and not weighed; "
        + "the remains of a trial count as recovered whole where no share is stated.");
  }
}
