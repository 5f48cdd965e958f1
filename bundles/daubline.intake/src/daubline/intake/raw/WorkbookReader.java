package daubline.intake.raw;

import daubline.base.Finding;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads a workbook (.xlsx). No formula is evaluated and no link is followed. */
final class WorkbookReader {

  private WorkbookReader() {
  }

  static RawFile read(String name, byte[] content) {
    Optional<Finding> refusal = WorkbookGuard.refusal(name, content);
    if (refusal.isPresent()) {
      return RawFile.refused(name, refusal.get());
    }
    try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(content))) {
      return sheets(name, workbook);
    } catch (IOException | RuntimeException e) {
      return RawFile.refused(name, WorkbookGuard.broken(name, e));
    }
  }

  private static RawFile sheets(String name, XSSFWorkbook workbook) {
    List<RawSheet> sheets = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (Sheet sheet : workbook) {
      sheets.add(new SheetReader(name, (XSSFSheet) sheet).read());
      if (workbook.isSheetHidden(workbook.getSheetIndex(sheet)) || workbook.isSheetVeryHidden(workbook.getSheetIndex(sheet))) {
        findings.add(Finding.note("sheet.hidden", name + ", sheet “" + sheet.getSheetName() + "”",
            "the sheet is hidden in the workbook",
            "it is read like any other; name another sheet if it is not meant"));
      }
    }
    return new RawFile(name, "workbook", sheets, findings);
  }
}
