package daubline.ui.study;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;

/** The studies that come with the tool. They are opened as copies in the person's own folder, so none can be damaged. */
public final class Seeds {

  /** The invented study that shows every part of the tool. */
  public static final String DEMONSTRATION = "aldervale";
  /** Published smelts and published evidence. */
  public static final String PUBLISHED = "open-smelts";
  private static final String ROOT = "daubline/seeds/";

  private Seeds() {
  }

  private static Bundle bundle() {
    return Platform.getBundle("daubline.app");
  }

  /** Whether a study of this name is part of this build. */
  public static boolean has(String name) {
    return bundle().getEntry(ROOT + name + "/study.xmi") != null;
  }

  /** The folder in which the person's studies are kept unless told otherwise. */
  public static Path home() {
    return Path.of(System.getProperty("daubline.studies", System.getProperty("user.home") + "/Daubline"));
  }

  /** The copy to go on with: the one made earlier, or a new one. */
  public static Path copy(String name) throws IOException {
    Path earlier = home().resolve(name);
    return Files.isRegularFile(earlier.resolve("study.xmi")) ? earlier : write(name, earlier);
  }

  /** A copy as it was delivered, beside earlier ones. */
  public static Path freshCopy(String name) throws IOException {
    Path folder = home().resolve(name);
    for (int number = 2; Files.exists(folder); number++) {
      folder = home().resolve(name + "-" + number);
    }
    return write(name, folder);
  }

  private static Path write(String name, Path folder) throws IOException {
    String root = ROOT + name + "/";
    Enumeration<URL> entries = bundle().findEntries(ROOT + name, "*", true);
    List<URL> all = entries == null ? List.of() : Collections.list(entries);
    for (URL entry : all) {
      String relative = entry.getPath().substring(entry.getPath().indexOf(root) + root.length());
      if (relative.endsWith("/")) {
        Files.createDirectories(folder.resolve(relative));
      } else {
        Path file = folder.resolve(relative);
        Files.createDirectories(file.getParent());
        try (InputStream in = entry.openStream()) {
          Files.copy(in, file);
        }
      }
    }
    return folder;
  }

  /** The names of the studies in this build, the demonstration first. */
  public static List<String> names() {
    return Stream.of(DEMONSTRATION, PUBLISHED).filter(Seeds::has).toList();
  }
}
