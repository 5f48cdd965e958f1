package daubline.session;

import daubline.base.Finding;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Brings files of older formats up to date while they are read; old versions load for ever. */
final class Migrations {

  /** The format that this version writes. */
  static final int CURRENT = 1;

  /** One step from a format to the next, on the text of every file of the study by relative path. */
  interface Migration {
    /** The format it starts from. */
    int from();

    /** The files in the next format. */
    Map<String, byte[]> apply(Map<String, byte[]> files) throws StudyException;
  }

  private static final List<Migration> ALL = List.of();

  private Migrations() {
  }

  /** The format that a study says it is written in. */
  static int formatOf(byte[] study, String place) throws StudyException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(study));
      while (reader.hasNext()) {
        if (reader.next() == XMLStreamReader.START_ELEMENT) {
          String format = reader.getAttributeValue(null, "format");
          return format == null ? 0 : Integer.parseInt(format);
        }
      }
    } catch (XMLStreamException | NumberFormatException e) {
      throw new StudyException(Finding.error("study.broken", place, "the file cannot be read: " + e.getMessage(),
          "restore it from the backups of the study or from another copy. Nothing was changed"), e);
    }
    return 0;
  }

  /** The files in the current format. */
  static Map<String, byte[]> upgrade(Map<String, byte[]> files, String place) throws StudyException {
    int format = formatOf(files.get(StudyFolder.STUDY_FILE), place);
    if (format > CURRENT) {
      throw new StudyException(Finding.error("study.newer", place, "the study is written in format " + format
          + "; this version reads up to " + CURRENT, "open it with a newer version"));
    }
    Map<String, byte[]> current = files;
    for (Migration step : ALL) {
      if (step.from() >= format) {
        current = step.apply(current);
      }
    }
    return current;
  }
}
