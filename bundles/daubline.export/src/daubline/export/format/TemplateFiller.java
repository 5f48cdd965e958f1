package daubline.export.format;

import daubline.base.Finding;
import daubline.export.Cell;
import daubline.export.DataTable;
import daubline.export.Provenance;
import daubline.export.Table;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.openxml4j.exceptions.NotOfficeXmlFileException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Fills a copy of a workbook of the user's own. A named range is filled that is called as a table (time_line), as a table and
 * one of its columns (residues.mass), or as a line of the notes (study_digest). The template itself is only read; in the copy
 * nothing outside the named ranges is overwritten.
 */
public final class TemplateFiller {

  private static final long LARGEST = 64L << 20;

  private final Provenance provenance;
  private final Map<String, Table> tables = new LinkedHashMap<>();
  private final Map<String, String> lines = new LinkedHashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  /** A filler for these tables and the lines of this provenance. */
  public TemplateFiller(Provenance provenance, List<Table> tables) {
    this.provenance = provenance;
    tables.forEach(table -> this.tables.put(named(table.id()), DataTable.of(table)));
    provenance.lines().forEach(line -> lines.put(named(line.name()), line.value()));
  }

  /** A text as the name of a range may be: lower case, underscores for what is no letter or digit. */
  private static String named(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  /**
   * Fills a copy.
   *
   * @param template the workbook; never changed
   * @param out where the copy goes; nothing is written when the template cannot be read
   * @return what could not be filled, each with the name of its range; an error when the template cannot be read
   * @throws IOException when the copy cannot be written
   */
  public List<Finding> fill(Path template, OutputStream out) throws IOException {
    Optional<XSSFWorkbook> opened = open(template);
    if (opened.isEmpty()) {
      return findings;
    }
    Path raw = Files.createTempFile("daubline", ".xlsx");
    try (XSSFWorkbook book = opened.get()) {
      WorkbookStyles styles = new WorkbookStyles(book);
      List<? extends Name> names = book.getAllNames().stream().filter(n -> !n.isFunctionName() && !n.getNameName().startsWith("_xlnm")).toList();
      int filled = 0;
      for (Name name : names) {
        filled += fill(book, styles, name) ? 1 : 0;
      }
      if (filled == 0) {
        findings.add(Finding.warning("template.nothing", String.valueOf(template.getFileName()), "no named range was filled",
            "name a cell as a table, such as " + tables.keySet().stream().findFirst().orElse("trials") + ", and publish again"));
      }
      book.setForceFormulaRecalculation(true);
      book.getProperties().getCoreProperties().setModified(Optional.of(Date.from(provenance.when())));
      try (OutputStream file = Files.newOutputStream(raw)) {
        book.write(file);
      }
      SteadyZip.copy(raw, provenance.when(), out);
      return findings;
    } finally {
      Files.deleteIfExists(raw);
    }
  }

  private Optional<XSSFWorkbook> open(Path template) {
    String where = String.valueOf(template.getFileName());
    try {
      if (!where.toLowerCase(Locale.ROOT).endsWith(".xlsx") || Files.size(template) > LARGEST) {
        findings.add(Finding.error("template.kind", where, "a template is a workbook that ends in .xlsx, of 64 MB at most", "save it as .xlsx, without macros"));
        return Optional.empty();
      }
      try (InputStream in = Files.newInputStream(template)) {
        return Optional.of(new XSSFWorkbook(in));
      }
    } catch (IOException | POIXMLException | NotOfficeXmlFileException | IllegalStateException e) {
      findings.add(Finding.error("template.unreadable", where, "it cannot be read as a workbook: " + e.getMessage(), "open it in a spreadsheet program and save "
          + "it as .xlsx, without a password"));
      return Optional.empty();
    }
  }

  private boolean fill(XSSFWorkbook book, WorkbookStyles styles, Name name) {
    String called = name.getNameName().toLowerCase(Locale.ROOT);
    int point = called.indexOf('.');
    Table table = tables.get(point < 0 ? called : called.substring(0, point));
    Optional<TemplateRange> range = Optional.empty();
    if (table == null && !lines.containsKey(called)) {
      say(name, "no table and no line of the notes is called so; the range is left as it is", "tables are " + String.join(", ", tables.keySet())
          + "; lines are " + String.join(", ", lines.keySet()));
      return false;
    }
    try {
      AreaReference area = new AreaReference(name.getRefersToFormula(), SpreadsheetVersion.EXCEL2007);
      range = Optional.ofNullable(book.getSheet(name.getSheetName())).map(sheet -> new TemplateRange(sheet, area, styles));
    } catch (RuntimeException e) {
      // a constant, a formula, several areas or a range that was deleted; POI has no common type for what it throws there
    }
    if (range.isEmpty()) {
      say(name, "it names no range of cells of one sheet; it is left as it is", "let it name one cell or one rectangle");
      return false;
    }
    Optional<String> obstacle = table == null ? range.get().line(lines.get(called)) : point < 0 ? table(range.get(), table)
        : column(range.get(), table, called.substring(point + 1));
    obstacle.ifPresent(o -> say(name, o, "make room for it, or name another cell"));
    range.filter(r -> obstacle.isEmpty()).ifPresent(r -> {
      name.setRefersToFormula(r.filled());
      r.complaints().forEach(c -> say(name, c, "shorten the text, or read it in the archive files"));
    });
    return obstacle.isEmpty();
  }

  private static Optional<String> column(TemplateRange range, Table table, String wanted) {
    for (int c = 0; c < table.columns().size(); c++) {
      if (table.columns().get(c).id().equals(wanted)) {
        List<Cell> cells = table.cells(c);
        return range.rows(cells.stream().map(List::of).toList(), List.of(table.columns().get(c)), 0);
      }
    }
    return Optional.of("table " + table.id() + " has no column “" + wanted + "”, but " + table.columns().stream().map(k -> k.id()).collect(Collectors.joining(", ")));
  }

  /** Where the template has headings of its own in the first row of the range they say which columns are wanted; otherwise all stand there. */
  private Optional<String> table(TemplateRange range, Table table) {
    List<String> headings = range.headings();
    if (headings.isEmpty()) {
      List<List<Cell>> rows = new ArrayList<>();
      rows.add(table.columns().stream().map(c -> Cell.text(c.fullHeading())).toList());
      rows.addAll(table.rows());
      return range.rows(rows, table.columns(), 0);
    }
    int[] picked = headings.stream().mapToInt(h -> find(table, h)).toArray();
    for (int i = 0; i < picked.length; i++) {
      if (picked[i] < 0) {
        return Optional.of("its heading “" + headings.get(i) + "” is no column of table " + table.id() + "; columns are "
            + table.columns().stream().map(c -> c.fullHeading()).collect(Collectors.joining(", ")));
      }
    }
    List<List<Cell>> rows = table.rows().stream().map(row -> java.util.Arrays.stream(picked).mapToObj(row::get).toList()).toList();
    return range.rows(rows, java.util.Arrays.stream(picked).mapToObj(table.columns()::get).toList(), 1);
  }

  private static int find(Table table, String heading) {
    for (int c = 0; c < table.columns().size(); c++) {
      var column = table.columns().get(c);
      if (List.of(column.id(), column.heading(), column.fullHeading()).stream().anyMatch(heading.strip()::equalsIgnoreCase)) {
        return c;
      }
    }
    return -1;
  }

  private void say(Name name, String what, String remedy) {
    findings.add(Finding.warning("template.range", "range " + name.getNameName(), what, remedy));
  }
}
