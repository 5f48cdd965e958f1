package daubline.export.format;

import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Provenance;
import daubline.export.Table;
import java.util.List;

/** Small invented tables. */
final class Samples {

  static final Provenance PROVENANCE = new Provenance("Küstental & Söhne", "sha256:abc", "0.0", List.of(new Provenance.Setting("Seed", "42")),
      Provenance.NO_TIME);

  private Samples() {
  }

  /** Each kind of cell once. */
  static Table kinds() {
    var mm = Units.find(Quantity.LENGTH, "mm").orElseThrow();
    return new Table("kinds", "Kinds of Cells", "Each kind of cell.",
        List.of(Column.text("id", "Id"), Column.number("d", "Diameter", "mm"), Column.text("note", "Note")),
        List.of(List.of(Cell.text("00012"), Cell.amount(Amount.plusMinus(0.4084, 0.0258), mm, null), Cell.text("plain")),
            List.of(Cell.text("1E5"), Cell.amount(Amount.exact(-0.255), mm, null).noted(1), Cell.text("says \"twice\", in\nfull")),
            List.of(Cell.text("03-04"), Cell.amount(Amount.belowLimit(0.00005), mm, null), Cell.text("=1+1")),
            List.of(Cell.text("-x"), Cell.amount(Amount.range(0.38, 0.434), mm, null), Cell.EMPTY),
            List.of(Cell.text("@y"), Cell.missing(ValueKind.NOT_RECORDED), Cell.text("\tz")),
            List.of(Cell.text("+1 b"), Cell.missing(ValueKind.NOT_ANALYSED), Cell.text("\rw"))),
        List.of("A depth below ground."));
  }

  static Table words(String... words) {
    return new Table("words", "Words", "", List.of(Column.text("word", "Word")), java.util.Arrays.stream(words).map(w -> List.of(Cell.text(w))).toList(),
        List.of());
  }

  /** A table that has a chart beside it. */
  static Table yields() {
    return new Table("yields", "Yields", "", List.of(Column.text("trial", "Trial"), Column.number("bloom_per_ore", "Bloom ÷ ore", "%")),
        List.of(List.of(Cell.text("A"), Cell.fixed(18.9, 1)), List.of(Cell.text("B"), Cell.fixed(25.5, 1))), List.of());
  }
}
