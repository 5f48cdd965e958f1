package daubline.publication;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Looks for names in files of any size, a piece at a time, as UTF-8 and as Latin letters of one byte. */
final class NameSearch {

  private static final int PIECE = 1 << 20;

  private NameSearch() {
  }

  /** Whether a file holds one of the names. */
  static boolean finds(Path file, List<String> names) throws IOException {
    List<String> wanted = names.stream().filter(n -> !n.isBlank()).flatMap(n -> Stream.of(n, inLatin(n))).distinct().toList();
    int longest = wanted.stream().mapToInt(String::length).max().orElse(0);
    if (wanted.isEmpty()) {
      return false;
    }
    try (InputStream in = Files.newInputStream(file)) {
      String before = "";
      for (byte[] piece = in.readNBytes(PIECE); piece.length > 0; piece = in.readNBytes(PIECE)) {
        // a name may lie across two pieces
        String text = before + new String(piece, StandardCharsets.ISO_8859_1);
        if (wanted.stream().anyMatch(text::contains)) {
          return true;
        }
        before = text.substring(Math.max(0, text.length() - longest));
      }
    }
    return false;
  }

  /** The bytes of the name in UTF-8, each read as a letter. */
  private static String inLatin(String name) {
    return new String(name.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
  }
}
