package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process is killed while it edits: what it entered more than a second before is there again. */
class KillTest {

  /** Edits without end and says after each change what it entered and when. */
  static final class Editor {
    public static void main(String[] args) throws Exception {
      StudySession session = StudySession.open(Path.of(args[0]));
      for (int i = 1;; i++) {
        String name = "G" + i;
        session.edit("Add " + name, () -> session.study().getSeries().get(0).getTrials().add(StudySessionTest.trial(name)));
        System.out.println(i + " " + System.nanoTime());
        System.out.flush();
        Thread.sleep(20);
      }
    }
  }

  @TempDir
  Path temporary;

  @Test
  void losesNothingEnteredMoreThanASecondBefore() throws Exception {
    Path folder = temporary.resolve("valley");
    try (StudySession session = StudySession.create(folder, "Valley")) {
      session.edit("Fill", () -> StudySessionTest.fill(session.study()));
      session.save();
    }
    Process editor = new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), Editor.class.getName(), folder.toString()))
        .redirectError(ProcessBuilder.Redirect.INHERIT).start();
    List<String> lines = new java.util.concurrent.CopyOnWriteArrayList<>();
    BufferedReader reader = editor.inputReader();
    Thread.startVirtualThread(() -> reader.lines().forEach(lines::add));
    long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
    while (lines.size() < 60 && System.nanoTime() < patience) {
      Thread.sleep(10);
    }
    editor.destroyForcibly().waitFor();
    long killed = System.nanoTime();
    long due = lines.stream().map(line -> line.split(" ")).filter(l -> killed - Long.parseLong(l[1]) > TimeUnit.SECONDS.toNanos(1))
        .mapToLong(l -> Long.parseLong(l[0])).max().orElse(0);
    assertTrue(due > 0, "the editor ran too short to test anything: " + lines.size());
    try (StudySession session = StudySession.open(Recovery.of(folder).orElseThrow())) {
      List<String> names = session.study().getSeries().get(0).getTrials().stream().map(t -> t.getName()).toList();
      for (int i = 1; i <= due; i++) {
        assertTrue(names.contains("G" + i), "lost G" + i);
      }
      assertEquals("Valley", session.study().getName());
    }
  }
}
