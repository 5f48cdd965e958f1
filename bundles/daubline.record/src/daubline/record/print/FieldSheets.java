package daubline.record.print;

import daubline.base.ResidueKinds;
import daubline.base.Variable;
import daubline.base.Variable.Place;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.record.Desk;
import daubline.record.EntryTable;
import daubline.record.LogTable;
import daubline.record.MeasureTable;
import daubline.record.PieceTable;
import daubline.record.ResidueTable;
import daubline.record.SampleTable;
import daubline.record.runday.RunDay;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Blank sheets for the field, with the columns of the screens in their order; where a table is wider than the paper its
 * columns go on, on the next sheet with the same row numbers. Then the sheet of the remains, the keys of the day and the briefing with lines to sign.
 */
public final class FieldSheets {

  private final Desk desk;
  private final Trial trial;
  private final boolean blank;

  /**
   * The sheets of a trial.
   *
   * @param trial the trial; null for sheets on which its name is written by hand
   */
  public FieldSheets(Desk desk, Trial trial) {
    this.desk = desk;
    this.blank = trial == null;
    this.trial = blank ? ModelFactory.eINSTANCE.createTrial() : trial;
  }

  /** One sheet: its title, the headings of its columns, their shares, and what its rows begin with. */
  private record Form(String title, List<String> headings, List<Double> shares, List<String> begun) {
  }

  /** Writes all sheets. */
  public void write(PaperSize size, OutputStream out) throws IOException {
    try (Paper paper = new Paper(size, true, desk.words().of("print.sheets"))) {
      for (Form form : forms()) {
        new SheetPrinter(paper, desk.words(), name(), blank || trial.getOn() == null ? "" : trial.getOn()).print(form.title(), form.headings(), form.shares(), form.begun());
      }
      keys(paper);
      new Briefing(paper, desk.words()).print(desk.session().study(), trial);
      paper.save(out);
    }
  }

  private String name() {
    return blank || trial.getName() == null ? "" : trial.getName();
  }

  private List<Form> forms() {
    List<Form> forms = new ArrayList<>();
    forms.add(form(new LogTable(desk, trial), List.of()));
    forms.add(form(new MeasureTable(desk, trial), List.of()));
    forms.add(form(new PieceTable(desk, trial), List.of()));
    forms.add(form(new ResidueTable(desk, () -> null, () -> null), ResidueKinds.standard().stream().map(ResidueKinds.Kind::name).toList()));
    forms.add(form(new SampleTable(desk, trial), List.of()));
    List<String> properties = desk.variables().at(Place.REMAINS).stream().map(desk.words()::told).map(FieldSheets::property).toList();
    forms.add(new Form(desk.words().of("print.remains"), List.of(desk.words().of("print.property"), desk.words().of("print.value"), desk.words().of("print.missing"),
        desk.words().of("print.note")), List.of(3.4, 1.4, 1.6, 2.4), properties));
    return forms;
  }

  private static String property(Variable variable) {
    return variable.name() + (variable.unit().symbol().isEmpty() ? "" : " (" + variable.unit().symbol() + ")");
  }

  /** The columns in which something is typed on screen and that paper can hold, in the same order. */
  private Form form(EntryTable table, List<String> begun) {
    List<String> headings = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      if (table.isPrinted(i)) {
        headings.add(table.heading(i));
        shares.add(table.share(i));
      }
    }
    return new Form(desk.words().of("print." + table.id()), headings, shares, begun);
  }

  private void keys(Paper paper) throws IOException {
    paper.sheet();
    float y = Paper.EDGE + 16;
    paper.text(desk.words().of("print.keys"), Paper.EDGE, y, 16);
    String stop = trial.eContainer() instanceof Series series && series.getStopCriteria() != null ? series.getStopCriteria() : "";
    for (String line : paper.wrap(desk.words().of("print.stop", stop.isEmpty() ? "________________________________________" : stop), 13, paper.width() - 2 * Paper.EDGE)) {
      y += 20;
      paper.text(line, Paper.EDGE, y, 13);
    }
    y += 12;
    float top = y;
    float x = Paper.EDGE;
    for (Map.Entry<String, String> key : RunDay.keys(desk)) {
      y += 24;
      if (y > paper.height() - Paper.EDGE - 24) {
        x += (paper.width() - 2 * Paper.EDGE) / 2;
        y = top + 24;
      }
      paper.frame(x, y - 15, 52, 20);
      paper.text(key.getKey(), x + 6, y, 12);
      paper.text(key.getValue(), x + 62, y, 12);
    }
    float foot = paper.height() - Paper.EDGE;
    for (String line : paper.wrap(desk.words().of("print.safety"), Paper.SMALLEST, paper.width() - 2 * Paper.EDGE)) {
      paper.text(line, Paper.EDGE, foot, Paper.SMALLEST);
      foot += 14;
    }
  }
}
