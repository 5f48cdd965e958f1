package daubline.publication;

import daubline.export.Provenance;
import java.util.List;

/** The first page of a deposit. */
final class DepositReadme {

  private DepositReadme() {
  }

  static String text(DepositMetadata metadata, List<String> withheld) {
    StringBuilder text = new StringBuilder("# ").append(metadata.title()).append("\n\n").append(metadata.description()).append("\n\n");
    text.append("""
        | What | Where |
        | :--- | :--- |
        | tables, one for each kind of object | `data/*.csv` |
        | their columns, types, keys and kinds of missing values | `datapackage.json` (Data Package, version 2) |
        | variables with unit and meaning | `codebook.csv` |
        | logger and laboratory files as delivered | `raw/` |
        | pictures that may be shown, with captions and rights | `media/`, `media/index.csv` |
        | what the integrity checks found and nobody has settled | `checks.txt` |
        | how to cite, licence, metadata for archives | `CITATION.cff`, `LICENSE`, `datacite.json` |
        | checksums of all files | `SHA256SUMS` |

        The tables are made for programs: RFC 4180, UTF-8, a point as decimal sign. Import them into a spreadsheet as text; when one is opened
        by a double click, the program may take text for a formula or a date. `typed` and `unit` hold each value as it was typed; `value`,
        `low`, `high` and `sigma` hold it in the canonical unit of its variable (see the codebook). A reason why there is no number stands in
        its place, such as NOT_PRESERVED or NOT_WEIGHED; none of them is zero.

        `held_by`, `held_as` and `held_at` say which object holds a row, as what and at which place, so that the study can be put together
        again: `daubline read-deposit DEPOSIT FOLDER`.
        """);
    if (!withheld.isEmpty()) {
      text.append("\nNot in this deposit:\n\n");
      withheld.forEach(w -> text.append("- ").append(w).append('\n'));
    }
    text.append("\nMade from and with:\n\n");
    for (Provenance.Setting line : metadata.provenance().lines()) {
      text.append("- ").append(line.name()).append(": ").append(line.value()).append('\n');
    }
    return text.toString();
  }
}
