package daubline.intake;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes files for tests: good ones and bad ones. */
final class Books {

  private Books() {
  }

  static Path csv(Path folder, String name, String... lines) throws IOException {
    return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
  }

  /** A workbook of one sheet; numbers become numeric cells, the rest text. */
  static Path xlsx(Path folder, String name, List<List<?>> rows, Consumer<XSSFSheet> more) throws IOException {
    Path file = folder.resolve(name);
    try (XSSFWorkbook workbook = new XSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
      fill(workbook.createSheet("Table"), rows);
      more.accept(workbook.getSheet("Table"));
      workbook.write(out);
    }
    return file;
  }

  static void fill(XSSFSheet sheet, List<List<?>> rows) {
    for (int r = 0; r < rows.size(); r++) {
      Row row = sheet.createRow(r);
      for (int c = 0; c < rows.get(r).size(); c++) {
        Object value = rows.get(r).get(c);
        if (value instanceof Number number) {
          row.createCell(c).setCellValue(number.doubleValue());
        } else if (!value.toString().isEmpty()) {
          row.createCell(c).setCellValue(value.toString());
        }
      }
    }
  }

  /** A packed file of parts. */
  static byte[] zip(Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
