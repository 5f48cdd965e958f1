package daubline.publication;

import daubline.base.Units;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.format.Plain;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The variables of a study with their units and meaning, made from the catalogue, so that it cannot go stale. */
final class Codebook {

  private Codebook() {
  }

  static Table of(Variables variables) {
    List<Column> columns = List.of(Column.text("id", "Id"), Column.text("name", "Name"), Column.text("group", "Group"), Column.text("type", "Type"),
        Column.text("quantity", "Quantity"), Column.text("usual_unit", "Usual unit"), Column.text("canonical_unit", "Canonical unit"),
        Column.text("plausible_low", "Plausible from"), Column.text("plausible_high", "Plausible to"), Column.text("places", "Recorded at"),
        Column.text("words", "Words"), Column.text("evidenced_by", "Evidenced by"), Column.text("meaning", "Meaning"), Column.text("source", "Source"));
    return new Table("codebook", "Codebook", "Variables of the study.", columns, variables.all().stream().map(Codebook::row).toList(), List.of());
  }

  private static List<Cell> row(Variable v) {
    List<String> places = v.places().stream().sorted(Comparator.naturalOrder()).map(p -> p.name().toLowerCase(Locale.ROOT)).toList();
    return List.of(Cell.text(v.id()), Cell.text(v.name()), Cell.text(v.group()), Cell.text(v.type().name().toLowerCase(Locale.ROOT)),
        Cell.text(v.quantity().name().toLowerCase(Locale.ROOT)), Cell.text(v.unit().symbol()), Cell.text(Units.canonical(v.quantity()).symbol()),
        Cell.text(number(v.plausibleLow())), Cell.text(number(v.plausibleHigh())), Cell.text(String.join(";", places)), Cell.text(String.join(";", v.words())),
        Cell.text(v.evidencedBy()), Cell.text(v.meaning()), Cell.text(v.source()));
  }

  private static String number(double value) {
    return Double.isNaN(value) ? "" : Plain.number(value);
  }
}
