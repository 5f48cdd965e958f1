package daubline.cli;

import daubline.analysis.checks.Checks;
import daubline.base.Finding;
import daubline.session.StudySession;
import daubline.session.merge.Conflict;
import daubline.session.merge.Merging;
import daubline.session.merge.Side;
import daubline.session.merge.StudyMerge;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts another person's copy of a study into one's own. */
@Command(name = "merge", mixinStandardHelpOptions = true, description = {
    "Say what another person's copy of a study, a folder or a backup, would change in MINE, and list what both changed, field by field; with --apply do it.",
    "Without --prefer a merge with conflicts changes nothing. --theirs and --mine choose for single conflicts by their number in the list."})
final class MergeCommand implements Callable<Integer> {

  /** What becomes of what both changed. */
  enum Prefer { MINE, THEIRS, LIST }

  @Parameters(index = "0", paramLabel = "MINE", description = "folder of the study that is merged into")
  private Path mine;

  @Parameters(index = "1", paramLabel = "THEIRS", description = "folder of the other copy, or a backup of it")
  private Path theirs;

  @Option(names = "--base", paramLabel = "BASE", description = "what both began from, a folder or a backup; without it the newest kept state that both went through")
  private Path base;

  @Option(names = "--prefer", defaultValue = "LIST", description = "whose version of a conflict is taken: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}, list them and change nothing)")
  private Prefer prefer;

  @Option(names = "--theirs", split = ",", paramLabel = "NUMBER", description = "conflicts in which theirs is taken")
  private List<Integer> takeTheirs = new ArrayList<>();

  @Option(names = "--mine", split = ",", paramLabel = "NUMBER", description = "conflicts in which mine stays")
  private List<Integer> keepMine = new ArrayList<>();

  @Option(names = "--apply", description = "merge and save; without it nothing is changed")
  private boolean apply;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = Blindness.lifted(apply ? StudySession.open(mine) : StudySession.read(mine)); Merging merging = Merging.open(mine, theirs, Optional.ofNullable(base))) {
      StudyMerge merge = merging.compare(session);
      Out.line("%s", merging.base().map(b -> "both began from " + b).orElse("what both began from is not known: all that differs is a conflict, and what is in one only counts as added"));
      merge.taken().forEach(t -> Out.line("  %s", t));
      Map<String, Side> choices = choices(merge.conflicts());
      print(merge.conflicts(), choices);
      merging.files(session).forEach(f -> Out.line("%s", f));
      int open = merge.conflicts().size() - choices.size();
      Out.line("%d taken from theirs, %d conflicts, %d of them open", merge.taken().size(), merge.conflicts().size(), open);
      if (open > 0) {
        Out.line("nothing was changed; choose by --prefer, --mine or --theirs");
        return Out.WRONG;
      }
      return apply ? finish(session, merging, choices) : Out.DONE;
    }
  }

  private Map<String, Side> choices(List<Conflict> conflicts) {
    Map<String, Side> choices = new LinkedHashMap<>();
    if (prefer != Prefer.LIST) {
      conflicts.forEach(c -> choices.put(c.id(), prefer == Prefer.MINE ? Side.MINE : Side.THEIRS));
    }
    keepMine.forEach(n -> choices.put(numbered(conflicts, n), Side.MINE));
    takeTheirs.forEach(n -> choices.put(numbered(conflicts, n), Side.THEIRS));
    return choices;
  }

  private static String numbered(List<Conflict> conflicts, int number) {
    if (number < 1 || number > conflicts.size()) {
      throw new IllegalArgumentException("there is no conflict " + number + "; there are " + conflicts.size());
    }
    return conflicts.get(number - 1).id();
  }

  private static void print(List<Conflict> conflicts, Map<String, Side> choices) {
    for (int i = 0; i < conflicts.size(); i++) {
      Conflict c = conflicts.get(i);
      String what = switch (c.kind()) {
        case FIELD -> c.field();
        case DELETED_HERE -> "deleted in mine, changed in theirs";
        case DELETED_THERE -> "deleted in theirs, changed in mine";
        case PLACE -> "place";
        case SORT -> "kind";
        case ORDER -> "order of " + c.field();
      };
      Side side = choices.get(c.id());
      Page.hang(2, 6, "conflict " + (i + 1) + ", " + (side == null ? "open" : side.name().toLowerCase(Locale.ROOT) + " taken") + ": " + c.object() + " " + c.place() + ": " + what);
      Page.hang(6, 8, "base “" + c.base() + "”, mine “" + c.mine() + "”, theirs “" + c.theirs() + "”");
    }
  }

  private static int finish(StudySession session, Merging merging, Map<String, Side> choices) throws Exception {
    List<String> lost = merging.apply(session, choices, "Merge");
    session.save();
    merging.noteLineage(session);
    lost.forEach(l -> Out.line("not kept: %s", l));
    Out.line("merged and saved; the checks say:");
    List<Finding> findings = Checks.run(session);
    Out.findings(findings);
    return Out.DONE;
  }
}
