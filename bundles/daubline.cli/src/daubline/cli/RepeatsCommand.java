package daubline.cli;

import daubline.analysis.RepeatSpread;
import daubline.analysis.SettingEditor;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyRepeats;
import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.criteria.Repeats;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Progress;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How far trials that repeat one another differ. */
@Command(name = "repeats", mixinStandardHelpOptions = true, description = "Say how far trials that repeat one another differ, criterion by criterion; "
    + "with --keep that spread becomes the tolerance of the study.")
final class RepeatsCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Mixin
  private ComparisonArguments arguments;

  @Option(names = "--keep", arity = "0..1", paramLabel = "CRITERION", fallbackValue = "all", description = "keep the spread as tolerance in the study and "
      + "save it: of this criterion, or without a name all; may be repeated")
  private List<String> keep;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = keep == null ? study.read() : study.open()) {
      StudySnapshot snapshot = Snapshots.of(session);
      StudyRepeats repeats = StudyRepeats.of(snapshot, arguments.options());
      if (repeats.recipes().isEmpty()) {
        Page.say(0, "no fired trial of this study is marked as the repeat of another one; open a trial and fill in “repeat of”");
        return Out.WRONG;
      }
      repeats.recipes().forEach(recipe -> print(snapshot, recipe));
      spreads(snapshot, repeats);
      if (keep != null) {
        keep(session, repeats.spreads());
      }
      return Out.DONE;
    }
  }

  private void print(StudySnapshot snapshot, List<TrialData> recipe) {
    for (Comparison c : StudyRepeats.among(snapshot, arguments.options(), recipe, Progress.NONE)) {
      Page.say(2, c.trialName() + " against " + c.sheetName() + ": " + (c.isTested() ? "agreement " + Printed.fixed(c.agreement(), 0) + " (" + Page.span(c.low(),
          c.high()) + "), a faithful repeat scores " + Page.span(c.bandLow(), c.bandHigh()) + ", coverage " + Page.percent(c.coverage()) : "nothing could be compared"));
    }
    Out.line("");
  }

  private static void spreads(StudySnapshot snapshot, StudyRepeats repeats) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("criterion", "spread within recipes", "90 % interval", "d. f.", "as tolerance", "tolerance now"));
    for (RepeatSpread r : repeats.toPrint(snapshot.settings())) {
      String unit = r.unit().symbol().isEmpty() ? "" : " " + r.unit().symbol();
      rows.add(List.of(r.criterion(), printed(r.spread()) + unit, printed(r.low()) + "–" + printed(r.high()) + unit, Integer.toString(r.freedom()),
          printed(r.asTolerance()) + unit, printed(r.now()) + unit));
    }
    Page.table(0, 1, rows);
    Out.line("");
    Page.say(0, "A spread on few degrees of freedom (d. f.) is itself uncertain, as its interval says, and is widened by Student's factor when it is used as "
        + "tolerance; one of zero teaches nothing and is never used. "
        + "compare --repeats-as-tolerance uses the spreads once, repeats --keep keeps them in the study.");
  }

  private static String printed(double value) {
    return Printed.number(value, 2);
  }

  private void keep(StudySession session, List<Repeats> spreads) throws Exception {
    boolean all = keep.contains("all");
    List<Repeats> chosen = spreads.stream().filter(r -> r.spread() > 0 && (all || keep.contains(r.criterion()))).toList();
    List<String> unknown = keep.stream().filter(k -> !k.equals("all") && spreads.stream().noneMatch(r -> r.criterion().equals(k) && r.spread() > 0)).toList();
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException("no spread of repeats above zero is known for " + String.join(", ", unknown) + "; nothing was kept");
    }
    StudyRepeats.keep(new SettingEditor(session), "Keep the spread of repeats as tolerance", chosen);
    session.save();
    Out.line("kept as tolerance and saved: %s", chosen.stream().map(Repeats::criterion).collect(Collectors.joining(", ")));
  }
}
