package daubline.session.backup;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The states that a study went through when a backup of it was made or it was made of one, by digest, the oldest first. Two
 * people's copies find by it what both began from.
 */
public final class Lineage {

  /** The name of the list inside a backup. */
  static final String LIST = "lineage.txt";
  private static final String FILE = ".daubline/" + LIST;

  private Lineage() {
  }

  /** The digests of the states of the study in a folder; empty when none was noted. */
  public static Set<String> of(Path study) throws IOException {
    Path file = study.resolve(FILE);
    return Files.isRegularFile(file) ? read(Files.readAllBytes(file)) : Set.of();
  }

  static Set<String> read(byte[] text) {
    return new LinkedHashSet<>(new String(text, StandardCharsets.UTF_8).lines().filter(l -> l.matches("[0-9a-f]{64}")).toList());
  }

  static byte[] print(Set<String> digests) {
    return digests.isEmpty() ? new byte[0] : (String.join("\n", digests) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /** Notes further states; those noted already stay where they stand. */
  static void note(Path study, Iterable<String> digests) throws IOException {
    Set<String> known = of(study);
    List<String> fresh = new java.util.ArrayList<>();
    digests.forEach(d -> {
      if (!known.contains(d) && !fresh.contains(d)) {
        fresh.add(d);
      }
    });
    if (!fresh.isEmpty()) {
      Path file = study.resolve(FILE);
      Files.createDirectories(file.getParent());
      Files.write(file, fresh, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }
  }
}
