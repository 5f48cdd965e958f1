package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Programs of other people that read what we write. A test that needs one is skipped, and says so, where it is not installed. */
final class Programs {

  static final Path SCRIPTS = Path.of("bundles/daubline.publication/test-data");
  /** The interpreter of the distribution, whose modules are installed from its packages. */
  static final String PYTHON = Files.exists(Path.of("/usr/bin/python3")) ? "/usr/bin/python3" : "python3";
  private static final long MINUTES = 10;

  private Programs() {
  }

  /** Skips the test unless a command succeeds. */
  static void need(String what, String... command) {
    Assumptions.assumeTrue(succeeds(command), what + " is not installed; releng/test installs it on Debian");
  }

  private static boolean succeeds(String... command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
      return process.waitFor(MINUTES, TimeUnit.MINUTES) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** What a command prints; fails the test when it does not end well. */
  static String run(Path folder, String... command) throws Exception {
    Path out = Files.createTempFile("program", ".out");
    Path err = Files.createTempFile("program", ".err");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
      builder.environment().put("HOME", folder.toAbsolutePath().toString());
      builder.environment().put("PYTHONIOENCODING", "utf-8");
      builder.environment().put("LC_ALL", "C.UTF-8");
      Process process = builder.start();
      if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        throw new IOException(command[0] + " did not end");
      }
      assertEquals(0, process.exitValue(), () -> String.join(" ", command) + ": " + text(err) + text(out));
      return Files.readString(out);
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static String text(Path file) {
    try {
      return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return e.toString();
    }
  }

  /** Lets LibreOffice read a file and write it again. */
  static Path convert(Path file, String format, Path folder) throws Exception {
    Path to = Files.createDirectories(folder.resolve("converted"));
    run(folder, "soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to", format, "--outdir", to.toString(),
        file.toString());
    String name = file.getFileName().toString();
    return to.resolve(name.substring(0, name.lastIndexOf('.') + 1) + format.replaceAll(":.*", ""));
  }

  static void needLibreOffice() {
    need("LibreOffice", "soffice", "--version");
  }

  static void needPython(String module) {
    need("Python with " + module, PYTHON, "-c", "import " + module);
  }

  static void needR(String library) {
    need("R with " + library, "Rscript", "-e", "library(" + library + ")");
  }

  /** The lines that two programs read differently, no more than a few. */
  static List<String> differences(List<String> ours, List<String> theirs) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < Math.max(ours.size(), theirs.size()) && found.size() < 5; i++) {
      String a = i < ours.size() ? ours.get(i) : "nothing";
      String b = i < theirs.size() ? theirs.get(i) : "nothing";
      if (!Cells.isAlike(a, b)) {
        found.add(a + " was read as " + b);
      }
    }
    return found;
  }
}
