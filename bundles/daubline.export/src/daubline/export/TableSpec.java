package daubline.export;

import daubline.analysis.StudyResults;

/** How one table of the publication is made of results; listed in {@link Tables#all()}. */
public interface TableSpec {

  /** A stable short name, also the name of files and sheets: lower case with hyphens. */
  String id();

  /** The title, in headline case. */
  String title();

  /** Makes the table with what was chosen about its content. */
  Table build(StudyResults results, TableOptions options);

  /** Makes the table as usual. */
  default Table build(StudyResults results) {
    return build(results, TableOptions.STANDARD);
  }
}
