package daubline.cli;

import daubline.analysis.EntryOrigins;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.base.Trail;
import daubline.charts.FigureSpec;
import daubline.charts.Figures;
import daubline.charts.NamedFigure;
import daubline.charts.Spots;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.export.CellOrigins;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.TableSpec;
import daubline.export.Tables;
import daubline.model.Identified;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says where numbers came from: of a variable, an entry, a table or a figure. */
@Command(name = "where", mixinStandardHelpOptions = true, description = {"Say where numbers come from: typed text, conversion, citation, person, time.",
    "WHAT is a variable, the id of any entry, or the short name of a table or figure (as files of “publish” are named).",
    "Of a table the cells with numbers are told, of a figure its marks; --holding picks some of them."})
final class WhereCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "WHAT", description = "a variable, an id, a table or a figure")
  private String what;

  @Option(names = "--row", paramLabel = "N", description = "this row of the table only, counted from 1 below the heading")
  private int row;

  @Option(names = "--column", paramLabel = "NAME", description = "this column of the table only: its heading or its short name")
  private String column = "";

  @Option(names = "--holding", paramLabel = "TEXT", description = "only what holds this text: cells of rows, or marks")
  private String holding = "";

  @Option(names = "--depth", paramLabel = "N", description = "how many steps to go back, ${DEFAULT-VALUE} unless said otherwise", defaultValue = "6")
  private int depth;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      List<String> lines = values(Snapshots.of(session));
      if (lines.isEmpty()) {
        session.find(what, Identified.class).ifPresent(o -> lines.add(new EntryOrigins(session).of(o, o.eClass().getName(), "").asText(depth).stripTrailing()));
      }
      Optional<TableSpec> table = Tables.find(what);
      Optional<FigureSpec> figure = figure();
      if (lines.isEmpty() && (table.isPresent() || figure.isPresent())) {
        StudyResults results = StudyComparison.of(session, daubline.analysis.ComparisonOptions.standard());
        table.ifPresent(t -> cells(results, t.build(results), lines));
        figure.ifPresent(f -> marks(results, f, lines));
      }
      lines.forEach(Out::line);
      if (lines.isEmpty()) {
        Out.line("no value, variable, entry, table or figure “%s” in this study%s", what, row > 0 || !column.isEmpty() || !holding.isEmpty() ? ", or nothing of it is as asked" : "");
        Out.line("names are listed by “variables”, “table” and “publish”; ids stand in the files of the study");
      }
      return lines.isEmpty() ? Out.WRONG : Out.DONE;
    }
  }

  private List<String> values(StudySnapshot snapshot) {
    return new ArrayList<>(Stream.concat(
        snapshot.sheets().stream().flatMap(e -> statements(e.site() + " · " + e.sheet().name(), e.sheet())),
        snapshot.trials().stream().flatMap(t -> Stream.concat(statements(t.name() + " · as found", t.found()), t.values().entrySet().stream()
            .sorted(Map.Entry.comparingByKey()).flatMap(stage -> stage.getValue().entrySet().stream()
                .flatMap(v -> v.getValue().stream().filter(s -> isWanted(v.getKey(), s)).map(s -> text(t.name() + " · " + stage.getKey().word(), s.trail())))))))
        .toList());
  }

  private Stream<String> statements(String place, SheetData sheet) {
    return sheet.statements().entrySet().stream().sorted(Map.Entry.comparingByKey())
        .flatMap(v -> v.getValue().stream().filter(s -> isWanted(v.getKey(), s)).map(s -> text(place, s.trail())));
  }

  private boolean isWanted(String variable, Statement statement) {
    return variable.equals(what) || statement.id().equals(what);
  }

  private void cells(StudyResults results, Table table, List<String> lines) {
    for (int r = 0; r < table.rows().size(); r++) {
      int at = r;
      boolean asked = (row <= 0 || row == r + 1) && (holding.isEmpty() || table.rows().get(r).stream().anyMatch(c -> holds(c.text())));
      for (int c = 0; asked && c < table.columns().size(); c++) {
        Column of = table.columns().get(c);
        boolean named = column.isEmpty() ? of.kind() == Column.Kind.NUMBER : of.heading().equalsIgnoreCase(column) || of.fullHeading().equalsIgnoreCase(column) || of.id().equalsIgnoreCase(column);
        if (named && (CellOrigins.isNumber(table.rows().get(r).get(c).text()) || !column.isEmpty())) {
          CellOrigins.of(results, table, r, c).ifPresent(t -> lines.add(text(table.title() + " · row " + (at + 1) + " · " + of.heading(), t)));
        }
      }
    }
  }

  private Optional<FigureSpec> figure() {
    return Figures.all().stream().filter(f -> what.equals(f.id()) || what.startsWith(f.id() + "-")).findFirst();
  }

  private void marks(StudyResults results, FigureSpec spec, List<String> lines) {
    for (NamedFigure figure : spec.all(results)) {
      if (figure.id().equals(what) || spec.id().equals(what)) {
        Spots.of(figure.figure()).stream().map(s -> s.from().get())
            .filter(t -> holding.isEmpty() || holds(t.what() + " " + t.value())).map(t -> text(figure.title(), t)).distinct().forEach(lines::add);
      }
    }
  }

  private boolean holds(String text) {
    return text.toLowerCase(Locale.ROOT).contains(holding.toLowerCase(Locale.ROOT));
  }

  private String text(String place, Trail trail) {
    return place + "\n" + trail.asText(depth).indent(2).stripTrailing();
  }
}
