package daubline.publication;

import daubline.analysis.StudyResults;
import daubline.charts.NamedFigure;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import daubline.export.Discretion;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.Table;
import daubline.export.format.Html;
import daubline.export.format.WordWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** One document with the whole study: text, tables and figures in place, and a trail for each value. */
final class Report {

  private static final int DPI = 200;
  private static final double WIDEST_MM = 170;
  private static final int MOST_ROWS = 3000;

  private final String title;
  private final List<Table> tables;
  private final List<NamedFigure> figures;
  private final Provenance provenance;
  private final Style style;
  private final List<Outline.Part> parts;
  private final Table trails;
  private final List<String> tableOrder = new ArrayList<>();
  private final List<String> figureOrder = new ArrayList<>();

  Report(StudyResults results, Discretion discretion, List<Table> tables, List<NamedFigure> figures, Provenance provenance, Style style) {
    this.title = provenance.study();
    this.tables = tables;
    this.figures = figures;
    this.provenance = provenance;
    this.style = style;
    this.parts = new Outline(results).parts().stream().map(p -> p.in(style.wording()).with(discretion)).toList();
    parts.forEach(part -> {
      part.tables().stream().filter(id -> table(id).isPresent()).forEach(tableOrder::add);
      placed(part).forEach(figure -> figureOrder.add(figure.id()));
    });
    this.trails = trails(tables).in(style.wording());
  }

  private Optional<Table> table(String id) {
    return tables.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  /** The figures of a part; a name stands for one figure or for all whose names begin with it. */
  private List<NamedFigure> placed(Outline.Part part) {
    return part.figures().stream().flatMap(id -> figures.stream().filter(f -> f.id().equals(id) || f.id().startsWith(id + "-"))).distinct().toList();
  }

  /** The trail of every value of some tables, numbered as in the report. */
  Table trails(List<Table> of) {
    return TrailTable.of(tableOrder.stream().map(id -> of.stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow()).toList());
  }

  private String told(String english) {
    return style.wording().apply(english);
  }

  /** A report is read by people: of a very long table it shows the beginning and says where the rest is. */
  private Table cut(Table table) {
    if (table.rows().size() <= MOST_ROWS) {
      return table;
    }
    List<String> notes = new ArrayList<>(table.notes());
    notes.add(told("The first " + MOST_ROWS + " of " + table.rows().size() + " rows; all are in archive/" + table.id() + ".csv."));
    return new Table(table.id(), table.title(), table.caption(), table.columns(), table.rows().subList(0, MOST_ROWS), notes);
  }

  private String caption(NamedFigure drawn) {
    return told("Figure " + (figureOrder.indexOf(drawn.id()) + 1)) + ". " + drawn.title() + ". " + drawn.figure().caption();
  }

  /** The report as one HTML file, its figures inside it. */
  String html() throws IOException {
    StringBuilder out = new StringBuilder("<!DOCTYPE html>\n<html lang=\"" + style.wording().language() + "\">\n<head>\n<meta charset=\"UTF-8\">\n<title>").append(Html.escape(title))
        .append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<h1>").append(Html.escape(title)).append("</h1>\n");
    for (Outline.Part part : parts) {
      out.append("<h2>").append(Html.escape(part.heading())).append("</h2>\n");
      part.paragraphs().forEach(p -> out.append("<p>").append(Html.escape(p)).append("</p>\n"));
      for (NamedFigure figure : placed(part)) {
        picture(figure, out);
      }
      part.tables().forEach(id -> table(id).ifPresent(t -> htmlTable(t, out)));
    }
    out.append("<h2>").append(told("Appendix")).append("</h2>\n").append(new Html(style).text(cut(trails))).append("<h2>").append(told("Made From")).append("</h2>\n<dl>\n");
    provenance.lines().forEach(l -> out.append("<dt>").append(Html.escape(told(l.name()))).append("</dt><dd>").append(Html.escape(told(l.value()))).append("</dd>\n"));
    return out.append("</dl>\n</body>\n</html>\n").toString();
  }

  private void htmlTable(Table table, StringBuilder out) {
    Table shown = cut(table);
    Table numbered = new Table(table.id(), told("Table " + (tableOrder.indexOf(table.id()) + 1)) + ". " + table.title(), table.caption(), table.columns(), shown.rows(),
        shown.notes());
    out.append(new Html(style).text(numbered));
  }

  private void picture(NamedFigure drawn, StringBuilder out) throws IOException {
    picture(drawn, caption(drawn), out);
  }

  /** A figure as part of an HTML file. */
  static void picture(NamedFigure drawn, String caption, StringBuilder out) throws IOException {
    ByteArrayOutputStream svg = new ByteArrayOutputStream();
    new SvgWriter().write(drawn.figure(), drawn.title(), Math.min(WIDEST_MM, drawn.figure().widthMm()), svg);
    out.append("<figure><img alt=\"").append(Html.escape(drawn.figure().caption())).append("\" src=\"data:image/svg+xml;base64,")
        .append(Base64.getEncoder().encodeToString(svg.toByteArray())).append("\"><figcaption>").append(Html.escape(caption))
        .append("</figcaption></figure>\n");
  }

  /** The report as a document. */
  void word(OutputStream out) throws IOException {
    try (WordWriter document = new WordWriter(provenance, style)) {
      document.heading(title, 1);
      for (Outline.Part part : parts) {
        document.heading(part.heading(), 2);
        for (String paragraph : part.paragraphs()) {
          document.paragraph(paragraph);
        }
        for (NamedFigure figure : placed(part)) {
          picture(figure, document);
        }
        for (String id : part.tables()) {
          if (table(id).isPresent()) {
            document.table(cut(table(id).get()), tableOrder.indexOf(id) + 1);
          }
        }
      }
      document.heading(told("Appendix"), 2);
      document.table(cut(trails), tableOrder.size() + 1);
      document.heading(told("Made From"), 2);
      for (Provenance.Setting line : provenance.lines()) {
        document.paragraph(told(line.name()) + ": " + told(line.value()));
      }
      document.write(out);
    }
  }

  private void picture(NamedFigure drawn, WordWriter document) throws IOException {
    picture(drawn, caption(drawn), document);
  }

  /** A figure as part of a document. */
  static void picture(NamedFigure drawn, String caption, WordWriter document) throws IOException {
    double width = Math.min(WIDEST_MM, drawn.figure().widthMm());
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    new PngWriter(DPI).write(drawn.figure(), drawn.title(), width, png);
    double points = width / 25.4 * 72;
    document.picture(new ByteArrayInputStream(png.toByteArray()), width, drawn.figure().height(points) / points, caption);
  }

  static final String STYLE = """
      body { font-family: "Liberation Sans", Arial, Helvetica, sans-serif; color: #1A233D; background: #fff; max-width: 62rem; margin: 2rem auto;
        padding: 0 1rem; line-height: 1.45 }
      h1, h2 { font-weight: 600 } h2 { border-bottom: 1px solid #8A8578; margin-top: 2.5rem }
      figure { margin: 1.5rem 0; overflow-x: auto } figcaption, caption { text-align: left; padding: .4rem 0 }
      table { border-collapse: collapse; font-size: .82rem; border-top: 2px solid; border-bottom: 2px solid }
      th { text-align: left; vertical-align: bottom; border-bottom: 1px solid } td { vertical-align: top; border-bottom: 1px solid #ddd }
      th, td { padding: .2rem .6rem .2rem 0 } .number { text-align: right; font-variant-numeric: tabular-nums } .note { font-size: .8rem; margin: .2rem 0 }
      img { max-width: 100%; height: auto } dt { font-weight: 600 } @media print { body { max-width: none } }
      """;
}
