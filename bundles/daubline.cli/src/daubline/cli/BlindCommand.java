package daubline.cli;

import daubline.model.BlindRecording;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.eclipse.emf.ecore.EObject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Who recorded remains blind, from when to when, and what was written meanwhile. */
@Command(name = "blind", mixinStandardHelpOptions = true, description = {
    "List who recorded remains without seeing run and evidence, from when to when, and what was written meanwhile.",
    "With --codes, the code names of the trials while it is on: for whoever shows the recorder the ruin, not for the recorder."})
final class BlindCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Option(names = "--codes", description = "which code name stands for which trial; shows what the recorder is not to see")
  private boolean codes;

  @Override
  public Integer call() throws Exception {
    try (StudySession session = study.read()) {
      if (codes) {
        return codes(session);
      }
      List<List<String>> rows = new ArrayList<>(List.of(List.of("recorded by", "from", "to", "trial", "entries")));
      for (BlindRecording recording : session.study().getBlindRecordings()) {
        String ended = text(recording.getEnded()).isEmpty() ? "still on" : recording.getEnded();
        Map<String, Integer> counts = counts(recording, text(recording.getEnded()).isEmpty() ? BlindRecordings.codes(session.study()) : Map.of());
        counts.forEach((trial, n) -> rows.add(List.of(recording.getBy() == null ? "" : text(recording.getBy().getName()), text(recording.getBegun()), ended, trial, n.toString())));
      }
      if (rows.size() == 1) {
        Out.line("nothing was recorded blind; in the window, Trial › Record Blind begins it");
      } else {
        Page.table(0, 4, rows);
      }
      stated(session).forEach(Out::line);
      return Out.DONE;
    }
  }

  /** How many entries of each trial; while it is on by code names, for the recorder may be reading this. */
  private static Map<String, Integer> counts(BlindRecording recording, Map<String, String> names) {
    Map<String, Integer> counts = new TreeMap<>();
    BlindRecordings.written(recording).forEach(entry -> counts.merge(name(trial(entry), names), 1, Integer::sum));
    return counts.isEmpty() ? Map.of("-", 0) : counts;
  }

  /** Sheets that somebody stated to be recorded blind without the window having seen to it. */
  private static List<String> stated(StudySession session) {
    List<String> lines = new ArrayList<>();
    session.study().eAllContents().forEachRemaining(o -> {
      if (o instanceof Sheet sheet && sheet.isBlind() && sheet.getBlindly() == null && BlindRecordings.current(session.study()).isEmpty()) {
        lines.add(text(sheet.getName()) + ": stated as recorded blind, without a recording of its own");
      }
    });
    return lines;
  }

  private static int codes(StudySession session) {
    Map<String, String> names = BlindRecordings.codes(session.study());
    if (names.isEmpty()) {
      Out.line("no blind recording is on, so no trial has a code name");
      return Out.WRONG;
    }
    List<List<String>> rows = new ArrayList<>(List.of(List.of("code", "trial")));
    session.study().getSeries().stream().flatMap(s -> s.getTrials().stream()).forEach(t -> rows.add(List.of(names.get(t.getId()), text(t.getName()))));
    Page.table(0, 2, rows);
    return Out.DONE;
  }

  private static Trial trial(EObject entry) {
    EObject o = entry;
    while (!(o instanceof Trial)) {
      o = o.eContainer();
    }
    return (Trial) o;
  }

  private static String name(Trial trial, Map<String, String> names) {
    return names.getOrDefault(trial.getId(), text(trial.getName()));
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
