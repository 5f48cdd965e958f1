package daubline.cli;

import daubline.analysis.StudySnapshot;
import daubline.analysis.deposit.HiddenNames;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Season;
import daubline.analysis.record.SeriesData;
import daubline.charts.Figure;
import daubline.charts.TimetableFigure;
import daubline.engine.design.stock.Capacity;
import daubline.engine.design.stock.Timetable;
import daubline.export.Discretion;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How many trials stock, hands and days allow. */
@Command(name = "capacity", mixinStandardHelpOptions = true, description = "Say how many trials stock, hands, days and permissions allow, what binds, and what would next.")
final class DesignCapacity implements Callable<Integer> {

  @Mixin
  private SeriesArgument series;

  @Option(names = "--json", description = "print JSON")
  private boolean json;

  @Option(names = "--timetable", paramLabel = "FILE", description = "write the timetable of builds, drying and burns as SVG, PDF or PNG")
  private Path timetable;

  @Override
  public Integer call() throws Exception {
    return series.read((session, snapshot, data) -> {
      Season season = Season.of(data);
      if (json) {
        Json.write(DesignJson.season(season), new Discretion(HiddenNames.of(session.study())), System.out);
      } else {
        print(snapshot, data);
      }
      if (timetable != null && season.isStated() && season.capacity().trials() > 0) {
        Timetable table = season.timetable(IntStream.range(0, season.capacity().trials()).map(i -> i % season.capacity().furnaces()).toArray());
        Figure figure = new TimetableFigure(table, season.calendar());
        FigureFiles.write(figure, "Timetable of " + data.name(), timetable);
        Out.line("wrote %s", timetable);
      }
      return season.findings().stream().anyMatch(daubline.base.Finding::isError) ? Out.WRONG : Out.DONE;
    });
  }

  static void print(StudySnapshot snapshot, SeriesData data) {
    Season season = Season.of(data);
    Out.line("%s: what stock, hands and days allow", DesignBrief.find(snapshot, data.id()).name());
    if (season.isStated()) {
      Capacity c = season.capacity();
      Out.line("  at most %d trials in %d furnaces, each burnt up to %d times", c.trials(), c.furnaces(), season.request().firings());
      for (Capacity.Limit limit : c.limits()) {
        Out.line("  %-28s %4s   %s", limit.name(), limit.trials() >= 500 ? "–" : Integer.toString(limit.trials()), limit.text());
      }
    }
    season.findings().forEach(f -> Out.line("  %s", f));
  }
}
