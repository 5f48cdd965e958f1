package daubline.ui.study;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The studies opened lately, the last first. */
public final class Recent {

  private static final String KEY = "recent";
  private static final int MOST = 8;

  private Recent() {
  }

  private static IEclipsePreferences node() {
    return InstanceScope.INSTANCE.getNode("daubline.ui");
  }

  /** The folders that still hold a study. */
  public static List<Path> studies() {
    return node().get(KEY, "").lines().filter(l -> !l.isBlank()).map(Path::of).filter(f -> Files.isRegularFile(f.resolve("study.xmi"))).toList();
  }

  /** Puts a folder first. */
  public static void remember(Path folder) {
    List<String> lines = new ArrayList<>(node().get(KEY, "").lines().filter(l -> !l.equals(folder.toString())).toList());
    lines.add(0, folder.toString());
    node().put(KEY, String.join("\n", lines.subList(0, Math.min(MOST, lines.size()))));
    try {
      node().flush();
    } catch (BackingStoreException e) {
      // the list of recent studies is a comfort; the study itself was opened
      org.eclipse.core.runtime.Platform.getLog(Recent.class).warn(e.getMessage(), e);
    }
  }
}
