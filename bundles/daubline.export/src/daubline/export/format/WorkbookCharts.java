package daubline.export.format;

import daubline.export.Cell;
import daubline.export.Table;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;

/** Charts of a spreadsheet's own beside the tables that they help to read; they follow the cells when somebody changes or sorts them. */
final class WorkbookCharts {

  private static final int MOST_ROWS = 60;
  /** Dark enough on white for every eye and for print in grey. */
  private static final byte[] INK = {0x1B, 0x66, 0x59};
  private static final int WIDE = 9;
  private static final int ROWS_FOR_FRAME = 8;

  /** Words and numbers of one chart by the ids of its columns. */
  private record Shape(String title, List<String> words, String number) {
  }

  private static final Map<String, Shape> SHAPES = Map.of(
      "ranking", new Shape("Agreement, to be read with its coverage", List.of("sheet", "trial"), "agreement"),
      "yields", new Shape("Bloom per ore", List.of("trial"), "bloom_per_ore"));

  private WorkbookCharts() {
  }

  /** Puts the chart of a table beside it, where it has one, and few enough rows to be read in it. */
  static void add(XSSFSheet sheet, Table table) {
    Shape shape = SHAPES.get(table.id());
    if (shape == null || table.rows().isEmpty() || table.rows().size() > MOST_ROWS) {
      return;
    }
    int number = index(table, shape.number());
    int[] words = shape.words().stream().mapToInt(w -> index(table, w)).toArray();
    int right = table.columns().size() + 1;
    XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, right, 1, right + WIDE, 1 + ROWS_FOR_FRAME + table.rows().size());
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
    chart.setTitleText(shape.title());
    chart.setTitleOverlay(false);
    XDDFCategoryAxis down = chart.createCategoryAxis(AxisPosition.LEFT);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
    down.setOrientation(AxisOrientation.MAX_MIN);
    across.setCrosses(AxisCrosses.MAX);
    across.setCrossBetween(AxisCrossBetween.BETWEEN);
    across.setMinimum(0);
    across.setTitle(table.columns().get(number).fullHeading());
    int last = table.rows().size();
    String[] names = table.rows().stream().map(row -> IntStream.of(words).mapToObj(w -> row.get(w).text()).reduce((a, b) -> a + " · " + b).orElse("")).toArray(String[]::new);
    Double[] values = table.cells(number).stream().map(WorkbookCharts::value).toArray(Double[]::new);
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, across);
    bars.setBarDirection(BarDirection.BAR);
    XDDFChartData.Series series = bars.addSeries(
        XDDFDataSourcesFactory.fromArray(names, range(sheet, last, words[0], words[words.length - 1])),
        XDDFDataSourcesFactory.fromArray(values, range(sheet, last, number, number)));
    series.setTitle(table.columns().get(number).heading(), null);
    series.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(INK)));
    bars.setVaryColors(false);
    bars.setGapWidth(60);
    chart.plot(bars);
    inOneLanguage(chart.getCTChart().getTitle());
    inOneLanguage(chart.getCTChart().getPlotArea().getValAxArray(0).getTitle());
  }

  /** The library marks titles with the language of whoever runs it, by which two exports would differ. */
  private static void inOneLanguage(CTTitle title) {
    for (CTTextParagraph paragraph : title.getTx().getRich().getPList()) {
      if (paragraph.isSetEndParaRPr()) {
        paragraph.unsetEndParaRPr();
      }
      paragraph.getRList().stream().filter(run -> run.isSetRPr()).forEach(run -> run.getRPr().setLang("en"));
    }
  }

  private static Double value(Cell cell) {
    return cell.isPlainNumber() ? cell.number() : null;
  }

  private static int index(Table table, String column) {
    return IntStream.range(0, table.columns().size()).filter(c -> table.columns().get(c).id().equals(column)).findFirst().orElseThrow();
  }

  private static String range(XSSFSheet sheet, int last, int from, int to) {
    return new CellRangeAddress(1, last, from, to).formatAsString(sheet.getSheetName(), true);
  }
}
