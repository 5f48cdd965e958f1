package daubline.export.format;

import daubline.export.Provenance;

/** The fixed parts of a document's package (ECMA-376 parts 1 and 2): types, relations, properties, styles. */
final class WordParts {

  /** The namespaces of the main part. */
  static final String NAMESPACES = "xmlns:w=\"http://schemas.openxmlformats.org/wordprocessingml/2006/main\""
      + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\""
      + " xmlns:wp=\"http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing\""
      + " xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\""
      + " xmlns:pic=\"http://schemas.openxmlformats.org/drawingml/2006/picture\"";

  static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  static final String TYPES = DECLARATION + """
      <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
      <Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>
      <Default Extension="xml" ContentType="application/xml"/><Default Extension="png" ContentType="image/png"/>
      <Override PartName="/word/document.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"/>
      <Override PartName="/word/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.styles+xml"/>
      <Override PartName="/docProps/core.xml" ContentType="application/vnd.openxmlformats-package.core-properties+xml"/>
      </Types>
      """;

  static final String RELATIONS = DECLARATION + """
      <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
      <Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="word/document.xml"/>
      <Relationship Id="rId2" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties" Target="docProps/core.xml"/>
      </Relationships>
      """;

  /** Named styles, so that a journal's own can be put in their place. */
  static final String STYLES = DECLARATION + """
      <w:styles xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:docDefaults><w:rPrDefault><w:rPr>
      <w:rFonts w:ascii="Liberation Sans" w:hAnsi="Liberation Sans" w:eastAsia="Liberation Sans" w:cs="Liberation Sans"/><w:sz w:val="20"/><w:szCs w:val="20"/>
      </w:rPr></w:rPrDefault><w:pPrDefault><w:pPr><w:spacing w:after="120"/></w:pPr></w:pPrDefault></w:docDefaults>
      """ + paragraph("Normal", "Normal", "", "") + heading(1, 34) + heading(2, 28) + heading(3, 24)
      + paragraph("Caption", "caption", "<w:keepNext/><w:spacing w:before=\"120\" w:after=\"60\"/>", "")
      + paragraph("FigureCaption", "Figure caption", "<w:spacing w:after=\"240\"/>", "")
      + paragraph("TableText", "Table text", "<w:spacing w:after=\"0\"/>", "<w:sz w:val=\"16\"/><w:szCs w:val=\"16\"/>")
      + paragraph("TableNumber", "Table number", "<w:spacing w:after=\"0\"/><w:jc w:val=\"right\"/>", "<w:sz w:val=\"16\"/><w:szCs w:val=\"16\"/>")
      + paragraph("TableNote", "Table note", "<w:spacing w:before=\"40\" w:after=\"0\"/>", "<w:sz w:val=\"16\"/><w:szCs w:val=\"16\"/>") + "</w:styles>";

  private static final int RELATED_BEFORE = 1;

  private WordParts() {
  }

  private static String heading(int level, int halfPoints) {
    return paragraph("Heading" + level, "heading " + level, "<w:keepNext/><w:spacing w:before=\"240\" w:after=\"120\"/><w:outlineLvl w:val=\"" + (level - 1)
        + "\"/>", "<w:b/><w:sz w:val=\"" + halfPoints + "\"/><w:szCs w:val=\"" + halfPoints + "\"/>");
  }

  private static String paragraph(String id, String name, String paragraph, String run) {
    boolean isNormal = id.equals("Normal");
    return "<w:style w:type=\"paragraph\"" + (isNormal ? " w:default=\"1\"" : "") + " w:styleId=\"" + id + "\"><w:name w:val=\"" + name + "\"/>"
        + (isNormal ? "" : "<w:basedOn w:val=\"Normal\"/>") + "<w:qFormat/><w:pPr>" + paragraph + "</w:pPr><w:rPr>" + run + "</w:rPr></w:style>\n";
  }

  /** The relations of the main part: its styles, and each picture. */
  static String related(int pictures) {
    StringBuilder xml = new StringBuilder(DECLARATION).append("<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">\n")
        .append("<Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/>\n");
    for (int i = 1; i <= pictures; i++) {
      xml.append("<Relationship Id=\"").append(relation(i)).append("\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/image\"")
          .append(" Target=\"media/figure").append(i).append(".png\"/>\n");
    }
    return xml.append("</Relationships>\n").toString();
  }

  /** The id by which the main part names its n-th picture, from 1. */
  static String relation(int picture) {
    return "rId" + (picture + RELATED_BEFORE);
  }

  /** Title, maker and time. */
  static String properties(Provenance provenance) {
    String time = provenance.when().toString();
    return DECLARATION + "<cp:coreProperties xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\""
        + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:dcterms=\"http://purl.org/dc/terms/\""
        + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"><dc:title>" + Html.escape(provenance.study()) + "</dc:title><dc:creator>Daubline "
        + Html.escape(provenance.version()) + "</dc:creator><dcterms:created xsi:type=\"dcterms:W3CDTF\">" + time
        + "</dcterms:created><dcterms:modified xsi:type=\"dcterms:W3CDTF\">" + time + "</dcterms:modified></cp:coreProperties>\n";
  }
}
