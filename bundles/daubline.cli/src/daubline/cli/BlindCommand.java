package daubline.cli;

import daubline.model.BlindRecording;
import daubline.model.Person;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.session.StudySession;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.eclipse.emf.ecore.EObject;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Who recorded remains blind, from when to when, and what was written meanwhile; begins and ends it. */
@Command(name = "blind", mixinStandardHelpOptions = true, description = {
    "List who recorded remains without seeing run and evidence, from when to when, who ended it, and what was written meanwhile.",
    "While it is on, the window hides run and evidence, and commands that would show them do not run.",
    "With --codes, the code names of the trials while it is on: for whoever shows the recorder the ruin, not for the recorder."})
final class BlindCommand implements Callable<Integer> {

  @Mixin
  private StudyArgument study;

  @Option(names = "--codes", description = "which code name stands for which trial; shows what the recorder is not to see")
  private boolean codes;

  @Option(names = "--begin", description = "begin it and save; --by says who records")
  private boolean begin;

  @Option(names = "--end", description = "end it and save; --by says who ends it")
  private boolean end;

  @Option(names = "--by", paramLabel = "NAME", defaultValue = "", description = "a person of the study, or a new one")
  private String by;

  @Override
  public Integer call() throws Exception {
    if (begin || end) {
      change();
    }
    try (StudySession session = study.unread()) {
      return codes ? codes(session) : list(session);
    }
  }

  private void change() throws Exception {
    if (begin && end) {
      throw new IllegalArgumentException("give --begin or --end, not both");
    }
    try (StudySession session = study.unreadToChange()) {
      if (begin) {
        BlindRecordings.begin(session, "Record Blind", by, Instant.now());
      } else {
        BlindRecordings.end(session, "End Blind Recording", by, Instant.now());
      }
      session.save();
    }
  }

  private static int list(StudySession session) {
    List<List<String>> rows = new ArrayList<>(List.of(List.of("recorded by", "from", "to", "ended by", "trial", "entries")));
    for (BlindRecording recording : session.study().getBlindRecordings()) {
      String ended = text(recording.getEnded()).isEmpty() ? "still on" : recording.getEnded();
      Map<String, Integer> counts = counts(recording);
      counts.forEach((trial, n) -> rows.add(List.of(name(recording.getBy()), text(recording.getBegun()), ended, name(recording.getEndedBy()), trial, n.toString())));
    }
    if (rows.size() == 1) {
      Out.line("nothing was recorded blind; in the window, Trial › Record Blind begins it, here --begin --by NAME");
    } else {
      Page.table(0, 5, rows);
    }
    stated(session).forEach(Out::line);
    return Out.DONE;
  }

  /** How many entries of each trial; while it is on by code names, for the recorder may be reading this. */
  private static Map<String, Integer> counts(BlindRecording recording) {
    Map<String, Integer> counts = new TreeMap<>();
    BlindRecordings.written(recording).forEach(entry -> counts.merge(text(BlindRecordings.nameOf(trial(entry))), 1, Integer::sum));
    return counts.isEmpty() ? Map.of("-", 0) : counts;
  }

  /** Sheets that somebody stated to be recorded blind without the window having seen to it. */
  private static List<String> stated(StudySession session) {
    List<String> lines = new ArrayList<>();
    session.study().eAllContents().forEachRemaining(o -> {
      if (o instanceof Sheet sheet && sheet.isBlind() && sheet.getBlindly() == null && !Blindness.isOn(session)) {
        lines.add(text(sheet.getName()) + ": stated as recorded blind, without a recording of its own");
      }
    });
    return lines;
  }

  private static int codes(StudySession session) {
    if (!Blindness.isOn(session)) {
      Out.line("no blind recording is on, so no trial has a code name");
      return Out.WRONG;
    }
    List<List<String>> rows = new ArrayList<>(List.of(List.of("code", "trial")));
    session.study().getSeries().stream().flatMap(s -> s.getTrials().stream()).forEach(t -> rows.add(List.of(BlindRecordings.nameOf(t), text(t.getName()))));
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

  private static String name(Person person) {
    return person == null ? "" : text(person.getName());
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
