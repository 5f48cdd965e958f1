package daubline.export.format;

import daubline.base.Wording;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.DataTable;
import daubline.export.Provenance;
import daubline.export.Table;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * Writes tables as one workbook: contents, one table a sheet, notes. Numbers are numbers with formats; text is text,
 * never a formula. The same tables give the same bytes. Rows go through a temporary file, so that large tables need
 * little memory.
 */
public final class WorkbookWriter {

  private static final int ROWS_IN_MEMORY = 200;

  private final Provenance provenance;
  private final Wording wording;

  /** A writer that prints this provenance on the notes sheet. */
  public WorkbookWriter(Provenance provenance) {
    this(provenance, Wording.ENGLISH);
  }

  /** The same in another language: names of sheets, contents and notes. */
  public WorkbookWriter(Provenance provenance, Wording wording) {
    this.provenance = provenance;
    this.wording = wording;
  }

  /**
   * Writes a workbook.
   *
   * @param tables the tables in order
   * @param out where to; not closed
   * @return what could not be stored as it was, also said on the notes sheet
   */
  public List<String> write(List<Table> tables, OutputStream out) throws IOException {
    Path raw = Files.createTempFile("daubline", ".xlsx");
    try (SXSSFWorkbook book = new SXSSFWorkbook(ROWS_IN_MEMORY)) {
      List<String> complaints = fill(book, tables);
      try (OutputStream file = Files.newOutputStream(raw)) {
        book.write(file);
      }
      SteadyZip.copy(raw, provenance.when(), out);
      return complaints;
    } finally {
      Files.deleteIfExists(raw);
    }
  }

  private List<String> fill(SXSSFWorkbook book, List<Table> tables) {
    properties(book.getXSSFWorkbook().getProperties());
    WorkbookStyles styles = new WorkbookStyles(book);
    SheetNames names = new SheetNames();
    String contentsName = names.free(wording.apply("Contents"));
    Map<String, Table> sheets = new LinkedHashMap<>();
    tables.forEach(table -> sheets.put(names.free(table.title()), DataTable.of(table).in(wording)));
    String notesName = names.free(wording.apply("Notes"));
    new WorkbookSheet(book, styles, contentsName, contents(sheets, notesName).in(wording)).fill();
    link(book, styles, sheets, notesName);
    List<String> complaints = new ArrayList<>();
    sheets.forEach((name, table) -> complaints.addAll(new WorkbookSheet(book, styles, name, table).fill()));
    new WorkbookSheet(book, styles, notesName, notes(sheets, complaints).in(wording)).fill();
    return complaints;
  }

  private void properties(POIXMLProperties properties) {
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setTitle(CellText.storable(provenance.study()));
    core.setCreator("Daubline " + provenance.version());
    core.setLastModifiedByUser("Daubline " + provenance.version());
    core.setCreated(Optional.of(Date.from(provenance.when())));
    core.setModified(Optional.of(Date.from(provenance.when())));
    properties.getExtendedProperties().getUnderlyingProperties().setApplication("Daubline");
  }

  private Table contents(Map<String, Table> sheets, String notesName) {
    List<List<Cell>> rows = new ArrayList<>();
    sheets.forEach((name, table) -> rows.add(List.of(Cell.text(name), Cell.fixed(table.rows().size(), 0), Cell.text(table.caption()))));
    rows.add(List.of(Cell.text(notesName), Cell.EMPTY, Cell.text(wording.apply("Footnotes of the tables, and what this workbook was made from and with."))));
    return new Table("contents", "Contents", "", List.of(Column.text("sheet", "Sheet"), Column.number("rows", "Rows", ""),
        Column.text("shows", "What it shows")), rows, List.of());
  }

  private static void link(SXSSFWorkbook book, WorkbookStyles styles, Map<String, Table> sheets, String notesName) {
    List<String> names = new ArrayList<>(sheets.keySet());
    names.add(notesName);
    for (int i = 0; i < names.size(); i++) {
      Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
      link.setAddress("'" + names.get(i).replace("'", "''") + "'!A1");
      Row row = book.getSheetAt(0).getRow(i + 1);
      row.getCell(0).setHyperlink(link);
      row.getCell(0).setCellStyle(styles.link());
    }
  }

  private Table notes(Map<String, Table> sheets, List<String> complaints) {
    List<List<Cell>> rows = new ArrayList<>();
    provenance.lines().forEach(line -> rows.add(note(wording.apply("This workbook"), wording.apply(line.name()), wording.apply(line.value()))));
    complaints.forEach(complaint -> rows.add(note(wording.apply("This workbook"), wording.apply("Not stored as it was"), wording.apply(complaint))));
    sheets.forEach((name, table) -> {
      for (int i = 0; i < table.notes().size(); i++) {
        rows.add(note(name, table.isMarked(i + 1) ? wording.apply("Footnote") + " [" + (i + 1) + "]" : wording.apply("Note"), table.notes().get(i)));
      }
    });
    return new Table("notes", "Notes", "", List.of(Column.text("about", "About"), Column.text("what", "What"), Column.text("note", "Note")),
        rows, List.of());
  }

  private static List<Cell> note(String about, String what, String text) {
    return List.of(Cell.text(about), Cell.text(what), Cell.text(text));
  }
}
