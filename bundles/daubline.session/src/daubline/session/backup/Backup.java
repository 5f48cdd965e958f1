package daubline.session.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One dated copy of a study.
 *
 * @param file the file; its name is that of the study's folder and the date and time
 * @param at when the study stood so, local time
 */
public record Backup(Path file, LocalDateTime at) {

  /** How the name of a backup ends. */
  public static final String ENDING = ".zip";
  private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss");
  private static final int STAMP_LENGTH = 17;

  /** Where a backup of a study made at some time is to lie. */
  static Backup of(Path folder, String name, LocalDateTime at) {
    return new Backup(folder.resolve(name + "-" + STAMP.format(at) + ENDING), at);
  }

  /** The backups of one study in a folder, the oldest first; other files are left alone. */
  public static List<Backup> in(Path folder, String name) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(Files::isRegularFile).map(f -> named(f, name)).flatMap(Optional::stream)
          .sorted(Comparator.comparing(Backup::at).thenComparing(b -> b.file().toString())).toList();
    }
  }

  private static Optional<Backup> named(Path file, String name) {
    String text = file.getFileName().toString();
    if (!text.startsWith(name + "-") || text.length() != name.length() + 1 + STAMP_LENGTH + ENDING.length() || !text.endsWith(ENDING)) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Backup(file, LocalDateTime.parse(text.substring(name.length() + 1, text.length() - ENDING.length()), STAMP)));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }
}
