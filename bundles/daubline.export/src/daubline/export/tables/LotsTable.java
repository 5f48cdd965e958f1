package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.LotData;
import daubline.base.Variable;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** Material lots and their properties. */
public final class LotsTable extends Spec {

  /** The table. */
  public LotsTable() {
    super("lots", "Materials", "Lots of ore, charcoal, clay and flux with their treatment and properties, one property a row.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("lot", "Lot"), Column.words("material", "Material"), Column.text("origin", "Origin"), Column.text("made_from", "Made from"),
        Column.text("treatment", "Treatment"), Column.words("variable", "Property"), Column.text("unit", "Unit"), Column.number("value", "Value", ""));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (LotData lot : results.snapshot().record().lots()) {
      List<Cell> head = List.of(Cell.text(lot.name()), Cell.text(lot.material().word()), Cell.text(lot.origin()), Cell.text(lot.from()),
          Cell.text(String.join("; ", lot.treatments())));
      if (lot.values().isEmpty()) {
        rows.add(row(head, Cell.EMPTY, Cell.EMPTY, Cell.EMPTY));
      }
      lot.values().forEach((id, statements) -> results.snapshot().variables().find(id).ifPresent(variable -> rows.add(
          row(head, Cell.text(name(lot, variable)), Cell.text(variable.unit().symbol()), Values.cell(statements, variable.unit())))));
    }
    return rows;
  }

  /** Water is a share of one of two masses; which of them is said with it. */
  private static String name(LotData lot, Variable variable) {
    boolean water = variable.id().endsWith("_moisture");
    return variable.name() + (water ? " (" + (lot.moistureBasis().isEmpty() ? "basis not stated" : lot.moistureBasis() + " basis") + ")" : "");
  }

  private static List<Cell> row(List<Cell> head, Cell... more) {
    List<Cell> row = new ArrayList<>(head);
    row.addAll(List.of(more));
    return row;
  }
}
