package daubline.ui.prefs;

import daubline.ui.Words;
import daubline.ui.study.Notices;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The language of the window. It has to be known before the platform starts, so it stands in a file of the person's
 * folder for Daubline, which the start script reads.
 */
final class Language {

  private static final String SYSTEM = "system";

  private Language() {
  }

  private static Path file() {
    return Path.of(System.getProperty("daubline.home", System.getProperty("user.home") + "/.daubline"), "language");
  }

  /** The chosen language as a two-letter code, or "system". */
  static String chosen() {
    try {
      return Files.isRegularFile(file()) ? Files.readString(file()).strip() : SYSTEM;
    } catch (IOException e) {
      return SYSTEM;
    }
  }

  /** Chooses a language for the next start. */
  static void choose(String language) {
    try {
      if (language.equals(SYSTEM)) {
        Files.deleteIfExists(file());
      } else {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), language + "\n");
      }
    } catch (IOException e) {
      Notices.show(Words.of("prefs.language"), String.valueOf(e));
    }
  }
}
