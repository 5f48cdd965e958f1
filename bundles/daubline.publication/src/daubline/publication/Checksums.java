package daubline.publication;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** The list of files with their SHA-256, one a line, in the form that the usual checksum programs read. */
final class Checksums {

  /** The name of the list. */
  static final String NAME = "SHA256SUMS";

  private static final int DIGITS = 64;
  private static final String GAP = "  ";

  private Checksums() {
  }

  /** The list of all files of an output, in alphabetical order. */
  static String text(Output output) throws IOException {
    StringBuilder text = new StringBuilder();
    for (String name : output.names().stream().sorted().toList()) {
      text.append(DepositFile.hash(output.folder().resolve(name))).append(GAP).append(name).append('\n');
    }
    return text.toString();
  }

  /** Reads a list; lines that are none of one are passed over, and so are names that lead out of the folder. */
  static Map<String, String> read(Path folder) throws IOException {
    Map<String, String> sums = new TreeMap<>();
    if (Files.isRegularFile(folder.resolve(NAME))) {
      for (String line : Files.readAllLines(folder.resolve(NAME))) {
        if (line.length() > DIGITS + GAP.length() && line.startsWith(GAP, DIGITS) && isInside(folder, line.substring(DIGITS + GAP.length()))) {
          sums.put(line.substring(DIGITS + GAP.length()), line.substring(0, DIGITS));
        }
      }
    }
    return sums;
  }

  private static boolean isInside(Path folder, String name) {
    return name.indexOf('\0') < 0 && folder.resolve(name).normalize().startsWith(folder.normalize());
  }
}
