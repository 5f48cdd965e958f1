package daubline.intake;

import daubline.base.DateOrder;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Variables;
import daubline.intake.raw.RawFile;
import daubline.intake.raw.RawRow;
import daubline.intake.raw.RawSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Chooses sheet and heading row of a file, recognises its columns and decides decimal sign and order of dates. */
final class TableReader {

  private static final int ROWS_SEARCHED = 30;

  private final Form form;
  private final Variables variables;
  private final LabShape shape;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Recognised> recognised = new ArrayList<>();
  private IntakeOptions options;

  TableReader(Form form, Variables variables, IntakeOptions options) {
    this.form = form;
    this.variables = variables;
    this.options = options;
    this.shape = new LabShape(options);
  }

  private record Choice(RawSheet sheet, boolean turned, RawRow header, long known) {
  }

  /** The options, with the column of names where it was found. */
  IntakeOptions options() {
    return options;
  }

  /** What was recognised in the layout of a laboratory's table. */
  List<Recognised> recognised() {
    return recognised;
  }

  Table read(RawFile file) {
    findings.addAll(file.findings());
    if (file.sheets().isEmpty()) {
      return Table.refused(file.name(), findings);
    }
    List<RawSheet> candidates = candidates(file);
    if (candidates.isEmpty()) {
      return Table.refused(file.name(), findings);
    }
    List<String> names = file.sheets().stream().map(RawSheet::name).toList();
    Optional<Choice> choice = candidates.stream().map(this::header).flatMap(Optional::stream)
        .max(Comparator.comparingLong(Choice::known)
        .thenComparing(c -> -names.indexOf(c.sheet().name())));
    if (choice.isEmpty()) {
      findings.add(Finding.error("header.none", file.name(), "no row has headings of the form “" + form.target().word() + "”",
          "write an empty table by “template " + form.target().word()
          + "” and compare; state the heading row, the sheet or the delimiter if they are not found"));
      return Table.refused(file.name(), findings);
    }
    return table(file, choice.get());
  }

  private List<RawSheet> candidates(RawFile file) {
    Optional<String> wanted = options.get("sheet");
    List<RawSheet> sheets = file.sheets().stream()
        .filter(s -> wanted.isEmpty() ? !s.isEmpty() && !s.name().equals(Template.EXPLANATION)
        : s.name().equals(wanted.get())).toList();
    if (sheets.isEmpty() && wanted.isEmpty()) {
      findings.add(Finding.error("file.empty", file.name(), "nothing stands in its cells",
          "export it again, or choose another file"));
    }
    if (sheets.isEmpty() && wanted.isPresent()) {
      List<String> names = file.sheets().stream().map(RawSheet::name).toList();
      findings.add(Finding.error("sheet.unknown", file.name(), "there is no sheet “" + wanted.get() + "”",
          Nearest.remedy(wanted.get(), names, "its sheets are: " + String.join(", ", names))));
    }
    return sheets;
  }

  /** The row of a sheet that holds most known headings, or the one that was stated. */
  private Optional<Choice> header(RawSheet asItStands) {
    boolean turned = form.isOfLaboratories() && shape.isTurned(asItStands);
    RawSheet sheet = turned ? LabShape.turned(asItStands) : asItStands;
    return sheet.rows().stream()
        .filter(r -> options.header().isEmpty() ? !r.isEmpty() : r.number() == options.header().getAsInt())
        .limit(ROWS_SEARCHED).map(r -> new Choice(sheet, turned, r, known(r))).filter(c -> c.known() > 0)
        .max(Comparator.comparingLong(Choice::known).thenComparing(c -> -c.header().number()));
  }

  private long known(RawRow row) {
    Map<String, String> named = options.family("column");
    return row.cells().stream().filter(c -> !c.isEmpty())
        .filter(c -> named.containsKey(c.text()) || form.column(Heading.of(c.text()), variables).isPresent()).count();
  }

  private Table table(RawFile file, Choice choice) {
    RawSheet sheet = choice.sheet();
    String place = sheet.name().isEmpty() ? file.name() : file.name() + ", sheet “" + sheet.name() + "”";
    findings.addAll(sheet.findings());
    sayOthers(file, sheet.name(), place);
    LabShape.UnitRow units = form.isOfLaboratories() ? shape.units(sheet, choice.header()) : LabShape.UnitRow.NONE;
    List<RawRow> rows = sheet.rows().stream().filter(r -> r.number() > choice.header().number() && !r.isEmpty() && r.number() != units.number()).toList();
    if (form.isOfLaboratories()) {
      recognised.addAll(shape.said(choice.turned(), units, choice.header()));
      options = new LabColumns(form, variables, options).named(choice.header(), rows, recognised);
    }
    ColumnBinder binder = new ColumnBinder(form, variables, options, place, findings).with(units.units());
    List<Bound> columns = binder.bind(choice.header());
    sayAbove(sheet, choice.header(), units.number(), place);
    if (!choice.turned()) {
      refuseLongRows(rows, choice.header().cells().size(), place);
    }
    binder.sayFilledColumnsWithoutHeading(choice.header(), rows);
    if (rows.isEmpty()) {
      findings.add(Finding.error("table.empty", place, "there is no row below the headings in row "
          + choice.header().number(), "fill the table first"));
    }
    DecimalSign decimal = new FileSigns(place, options, findings).decimal(columns, rows);
    DateOrder dates = new FileSigns(place, options, findings).dates(columns, rows);
    return new Table(place, !sheet.name().isEmpty(), choice.header().number(), columns, binder.unread(), rows, decimal,
        dates, fixed(), findings, RowFacts.of(choice.turned(), units.number()));
  }

  private Map<String, String> fixed() {
    Map<String, String> fixed = new TreeMap<>();
    options.family("set").forEach((column, text) -> form.column(Heading.of(column), variables).ifPresentOrElse(
        known -> fixed.put(known.id(), text),
        () -> findings.add(Finding.error("column.unknown", "set:" + column, "the form has no column “" + column + "”",
            Nearest.remedy(column, names(), "see the explanation of the form")))));
    return fixed;
  }

  private List<String> names() {
    return form.columns(variables).stream().map(FormColumn::id).toList();
  }

  private void sayOthers(RawFile file, String chosen, String place) {
    List<String> others = file.sheets().stream().filter(s -> !s.name().equals(chosen) && !s.isEmpty()
        && !s.name().equals(Template.EXPLANATION))
        .map(RawSheet::name).toList();
    if (!others.isEmpty()) {
      findings.add(Finding.warning("sheet.chosen", place, "only this sheet is read; the workbook also has: "
          + String.join(", ", others),
          "import the others one by one by naming the sheet"));
    }
  }

  private void sayAbove(RawSheet sheet, RawRow header, int unitRow, String place) {
    String above = sheet.rows().stream().filter(r -> r.number() < header.number() && r.number() != unitRow && !r.isEmpty())
        .map(r -> String.valueOf(r.number()))
        .collect(Collectors.joining(", "));
    if (!above.isEmpty()) {
      findings.add(Finding.note("header.above", place, "headings are taken from row " + header.number()
          + "; not read above it: row " + above,
          "state the heading row if this is not it"));
    }
  }

  private void refuseLongRows(List<RawRow> rows, int width, String place) {
    for (RawRow row : rows) {
      if (place.indexOf(", sheet “") < 0 && row.cells().size() > width) {
        findings.add(Finding.error("row.long", place + ", row " + row.number(), "the row has " + row.cells().size()
            + " cells, the headings "
            + width + "; the last is “" + row.cells().get(row.cells().size() - 1).text() + "”",
            "put cells that hold the delimiter, such as 12,5 between commas, into quotation marks, or use another delimiter"));
      }
    }
  }
}
