package daubline.intake;

import daubline.base.FileFault;
import daubline.base.Finding;
import daubline.base.Variables;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes the empty table of a form with its explanation. */
final class Template {

  /** The sheet of a workbook that explains its columns; an import passes it over. */
  static final String EXPLANATION = "Explanation";

  private static final List<String> HEADINGS = List.of("Column", "Needed", "Holds", "Meaning", "Example", "Words");
  private static final int[] WIDTHS = {34, 9, 12, 80, 28, 60};
  private static final int WIDTH_UNIT = 256;

  private final Form form;
  private final Variables variables;

  Template(Form form, Variables variables) {
    this.form = form;
    this.variables = variables;
  }

  List<Path> write(Path file) throws IntakeException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    try {
      if (name.endsWith(".xlsx")) {
        create(file, workbook());
        return List.of(file);
      }
      if (name.endsWith(".csv")) {
        Path text = file.resolveSibling(file.getFileName().toString().replaceFirst("(?i)\\.csv$", "") + "-columns.txt");
        create(text, explanation().getBytes(StandardCharsets.UTF_8));
        create(file, csv());
        return List.of(file, text);
      }
    } catch (IOException e) {
      throw new IntakeException(List.of(Finding.error("template.write", file.toString(), FileFault.what(e),
          "choose a name that is not taken, in a folder that may be written")));
    }
    throw new IntakeException(List.of(Finding.error("template.name", file.toString(),
        "the name ends neither in .xlsx nor in .csv", "let it end in one of them")));
  }

  private static void create(Path file, byte[] content) throws IOException {
    Files.write(file, content, StandardOpenOption.CREATE_NEW);
  }

  /** UTF-8 with the mark that spreadsheet programs need to read °C rightly. */
  private byte[] csv() throws IOException {
    StringWriter text = new StringWriter().append('\uFEFF');
    try (CsvWriter writer = CsvWriter.builder().build(text)) {
      writer.writeRecord(form.template(variables).stream().map(FormColumn::heading).toList());
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private String explanation() {
    StringBuilder text = new StringBuilder(form.explanation())
        .append("\n\nUnits stand in the heading in brackets and may be changed there.\n");
    for (FormColumn column : form.columns(variables)) {
      text.append('\n').append(column.heading()).append(column.required() ? "  (needed)" : "").append("\n  ")
          .append(column.meaning()).append('\n');
      if (!column.words().isEmpty()) {
        text.append("  Words: ").append(String.join(", ", column.words())).append('\n');
      } else if (!column.example().isEmpty()) {
        text.append("  Example: ").append(column.example()).append('\n');
      }
    }
    return text.toString();
  }

  private byte[] workbook() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      CellStyle heading = heading(workbook);
      Sheet table = workbook.createSheet(title());
      List<FormColumn> columns = form.template(variables);
      Row row = table.createRow(0);
      for (int i = 0; i < columns.size(); i++) {
        cell(row, i, columns.get(i).heading(), heading);
        table.setColumnWidth(i, Math.max(12, columns.get(i).heading().length() + 3) * WIDTH_UNIT);
      }
      table.createFreezePane(0, 1);
      explain(workbook, heading);
      workbook.write(out);
      return out.toByteArray();
    }
  }

  private String title() {
    return form.target().word().substring(0, 1).toUpperCase(Locale.ROOT) + form.target().word().substring(1);
  }

  private void explain(XSSFWorkbook workbook, CellStyle heading) {
    Sheet sheet = workbook.createSheet(EXPLANATION);
    CellStyle wrapped = workbook.createCellStyle();
    wrapped.setWrapText(true);
    wrapped.setVerticalAlignment(VerticalAlignment.TOP);
    Row first = sheet.createRow(0);
    for (int i = 0; i < WIDTHS.length; i++) {
      cell(first, i, HEADINGS.get(i), heading);
      sheet.setColumnWidth(i, WIDTHS[i] * WIDTH_UNIT);
    }
    sheet.createFreezePane(0, 1);
    cell(sheet.createRow(1), 3, form.explanation(), wrapped);
    for (FormColumn column : form.columns(variables)) {
      Row row = sheet.createRow(sheet.getLastRowNum() + 1);
      String holds = column.content().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      List<String> texts = List.of(column.heading(), column.required() ? "yes" : "", holds, column.meaning(),
          column.example(), String.join(", ", column.words()));
      for (int i = 0; i < texts.size(); i++) {
        cell(row, i, texts.get(i), wrapped);
      }
    }
  }

  private static CellStyle heading(XSSFWorkbook workbook) {
    Font bold = workbook.createFont();
    bold.setBold(true);
    CellStyle style = workbook.createCellStyle();
    style.setFont(bold);
    style.setWrapText(true);
    style.setVerticalAlignment(VerticalAlignment.TOP);
    return style;
  }

  private static void cell(Row row, int column, String text, CellStyle style) {
    Cell cell = row.createCell(column);
    cell.setCellValue(text);
    cell.setCellStyle(style);
  }
}
