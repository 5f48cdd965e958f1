package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.TableOptions;
import daubline.export.TableSpec;
import java.util.List;

/** A table made of columns, rows and notes. */
abstract class Spec implements TableSpec {

  private final String id;
  private final String title;
  private final String caption;

  /**
   * A table.
   *
   * @param id its short name
   * @param title its title
   * @param caption what it shows, in full sentences
   */
  Spec(String id, String title, String caption) {
    this.id = id;
    this.title = title;
    this.caption = caption;
  }

  @Override
  public final String id() {
    return id;
  }

  @Override
  public final String title() {
    return title;
  }

  @Override
  public final Table build(StudyResults results, TableOptions options) {
    return new Table(id, title, caption, columns(results), rows(results), notes(results));
  }

  abstract List<Column> columns(StudyResults results);

  abstract List<List<Cell>> rows(StudyResults results);

  List<String> notes(StudyResults results) {
    return List.of();
  }
}
