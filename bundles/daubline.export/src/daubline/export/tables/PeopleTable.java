package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.PersonData;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** Who took part; a name only where its owner consents. */
public final class PeopleTable extends Spec {

  /** The table. */
  public PeopleTable() {
    super("people", "People and Roles", "Who took part, with what experience. Names are printed by consent only.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("person", "Person"), Column.text("role", "Role"), Column.number("smelts_before", "Smelts before", ""),
        Column.text("trials", "Trials"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    List<PersonData> people = results.snapshot().record().people();
    for (int i = 0; i < people.size(); i++) {
      PersonData p = people.get(i);
      rows.add(List.of(Cell.text(p.mayPublishName() ? p.name() : "Person " + (i + 1)), Cell.text(p.role()),
          p.smeltsBefore() < 0 ? Cell.EMPTY : Cell.fixed(p.smeltsBefore(), 0), Cell.text(p.trials())));
    }
    return rows;
  }
}
