package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.session.StudySession;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Says where a value came from. */
@Command(name = "where", mixinStandardHelpOptions = true, description = "Say where the values of a variable come from: typed text, citation, person.")
final class WhereCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "ID", description = "id of a claim or value, or of a variable")
  private String id;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      StudySnapshot snapshot = Snapshots.of(session);
      List<String> lines = Stream.concat(
          snapshot.sheets().stream().flatMap(e -> statements(e.site() + " · " + e.sheet().name(), e.sheet())),
          snapshot.trials().stream().flatMap(t -> Stream.concat(statements(t.name() + " · as found", t.found()), t.values().entrySet().stream()
              .sorted(java.util.Map.Entry.comparingByKey()).flatMap(stage -> stage.getValue().entrySet().stream()
                  .flatMap(v -> v.getValue().stream().filter(s -> isWanted(v.getKey(), s)).map(s -> text(t.name() + " · " + stage.getKey().word(), s)))))))
          .toList();
      lines.forEach(Out::line);
      if (lines.isEmpty()) {
        Out.line("no value or variable “%s” in this study", id);
      }
      return lines.isEmpty() ? Out.WRONG : Out.DONE;
    }
  }

  private Stream<String> statements(String place, SheetData sheet) {
    return sheet.statements().entrySet().stream().sorted(java.util.Map.Entry.comparingByKey())
        .flatMap(v -> v.getValue().stream().filter(s -> isWanted(v.getKey(), s)).map(s -> text(place, s)));
  }

  private boolean isWanted(String variable, Statement statement) {
    return variable.equals(id) || statement.id().equals(id);
  }

  private static String text(String place, Statement statement) {
    return place + "\n" + statement.trail().asText().indent(2).stripTrailing();
  }
}
