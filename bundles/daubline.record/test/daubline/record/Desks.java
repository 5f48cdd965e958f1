package daubline.record;

import daubline.base.DecimalSign;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.Locale;

/** A new study with one trial, and hands that type. */
public final class Desks {

  private Desks() {
  }

  public static Desk desk(Path folder) throws Exception {
    StudySession session = StudySession.create(folder.resolve("study"), "Test");
    session.edit("Trial", () -> {
      Series series = ModelFactory.eINSTANCE.createSeries();
      series.setName("Series");
      Trial trial = ModelFactory.eINSTANCE.createTrial();
      trial.setName("T4");
      trial.setOn("2031-08-16");
      series.getTrials().add(trial);
      session.study().getSeries().add(series);
    });
    return new Desk(session, () -> DecimalSign.POINT, new RecordWords(Locale.ENGLISH));
  }

  public static Trial trial(Desk desk) {
    return desk.session().study().getSeries().get(0).getTrials().get(0);
  }

  /** Types into a cell; the complaint's code, or empty. */
  public static String type(EntryTable table, int row, String column, String text) {
    return table.put(row, table.columns().indexOf(column), text).map(f -> f.code()).orElse("");
  }

  public static String cell(EntryTable table, int row, String column) {
    return table.text(row, table.columns().indexOf(column));
  }

  /** Types a row at the end: column, text, column, text … */
  public static int row(EntryTable table, String... cells) {
    int row = table.rows() - 1;
    for (int i = 0; i < cells.length; i += 2) {
      String complaint = type(table, row, cells[i], cells[i + 1]);
      if (!complaint.isEmpty()) {
        throw new AssertionError(cells[i] + " = " + cells[i + 1] + ": " + complaint);
      }
    }
    return row;
  }
}
