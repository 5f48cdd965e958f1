package daubline.session.backup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** SHA-256 of files and the list of them: one line a file, the digest in hexadecimal, two blanks, the path with forward slashes. */
final class Checksums {

  /** The name of the list inside a backup. */
  static final String LIST = "checksums.sha256";
  private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");
  private static final int BLOCK = 1 << 16;

  private Checksums() {
  }

  static MessageDigest newDigest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  static String of(byte[] content) {
    return HexFormat.of().formatHex(newDigest().digest(content));
  }

  /** Copies a stream and returns the digest of what went through; refuses more bytes than were announced. */
  static String copy(InputStream in, OutputStream out, long most) throws IOException {
    MessageDigest digest = newDigest();
    byte[] block = new byte[BLOCK];
    long sum = 0;
    for (int read = in.read(block); read >= 0; read = in.read(block)) {
      sum += read;
      if (sum > most) {
        throw new IOException("holds more than it announces");
      }
      digest.update(block, 0, read);
      out.write(block, 0, read);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  static byte[] print(Map<String, String> sums) {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(sums).forEach((file, sum) -> text.append(sum).append("  ").append(file).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The list that a text holds; lines of another form are left out, so that what they name counts as not listed. */
  static Map<String, String> read(byte[] text) {
    Map<String, String> sums = new TreeMap<>();
    new String(text, StandardCharsets.UTF_8).lines().map(LINE::matcher).filter(Matcher::matches).forEach(m -> sums.put(m.group(2), m.group(1)));
    return sums;
  }
}
