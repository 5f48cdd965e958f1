package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;

/** The publications that claims come from. */
public final class CitationsTable extends Spec {

  /** The table. */
  public CitationsTable() {
    super("citations", "Sources", "Publications, reports and archives that claims come from.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("id", "Id"), Column.text("authors", "Authors"), Column.text("year", "Year"), Column.text("title", "Title"),
        Column.text("container", "In"), Column.text("volume", "Volume"), Column.text("pages", "Pages"), Column.text("publisher", "Publisher"),
        Column.text("doi", "DOI"), Column.text("url", "Address"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return results.snapshot().record().citations().stream().map(c -> List.of(Cell.text(c.id()), Cell.text(c.authors()), Cell.text(c.year()),
        Cell.text(c.title()), Cell.text(c.container()), Cell.text(c.volume()), Cell.text(c.pages()), Cell.text(c.publisher()), Cell.text(c.doi()),
        Cell.text(c.url()))).toList();
  }
}
