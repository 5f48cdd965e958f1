package daubline.export.format;

import java.math.BigInteger;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPPrGeneral;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STStyleType;

/** The heading styles of a document, by which programs find its outline. */
final class WordStyles {

  private static final int LEVELS = 3;

  private WordStyles() {
  }

  static void addTo(XWPFDocument document) {
    var styles = document.createStyles();
    for (int level = 1; level <= LEVELS; level++) {
      CTStyle style = CTStyle.Factory.newInstance();
      style.setType(STStyleType.PARAGRAPH);
      style.setStyleId("Heading" + level);
      style.addNewName().setVal("heading " + level);
      style.addNewUiPriority().setVal(BigInteger.valueOf(9));
      style.addNewQFormat();
      CTPPrGeneral paragraph = style.addNewPPr();
      paragraph.addNewOutlineLvl().setVal(BigInteger.valueOf(level - 1L));
      var spacing = paragraph.addNewSpacing();
      spacing.setBefore(BigInteger.valueOf(240));
      spacing.setAfter(BigInteger.valueOf(120));
      styles.addStyle(new XWPFStyle(style));
    }
  }
}
