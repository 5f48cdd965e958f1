package daubline.intake.raw;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** Finds out the encoding of a text: by its mark, by the zeros of UTF-16, by whether it is valid UTF-8. */
final class Encodings {

  /** The one-byte encoding of Western Europe that office programs write; it holds all that Latin-1 shows, and more. */
  static final Charset WINDOWS = Charset.forName("windows-1252");

  private static final int LOOKED_AT = 1 << 16;

  private Encodings() {
  }

  /**
   * A text with its encoding.
   *
   * @param text without the byte order mark
   * @param how the encoding in words
   * @param certain whether the bytes themselves say so
   */
  record Decoded(String text, String how, boolean certain) {
  }

  /** Decodes with the encoding that was stated, or with the one found. */
  static Decoded decode(byte[] content, Optional<Charset> stated) {
    if (stated.isPresent()) {
      return new Decoded(withoutMark(new String(content, stated.get())), stated.get().name() + " as stated", true);
    }
    if (starts(content, 0xEF, 0xBB, 0xBF)) {
      return new Decoded(withoutMark(new String(content, StandardCharsets.UTF_8)), "UTF-8 with byte order mark", true);
    }
    if (starts(content, 0xFF, 0xFE)) {
      return new Decoded(withoutMark(new String(content, StandardCharsets.UTF_16LE)), "UTF-16 (little endian)", true);
    }
    if (starts(content, 0xFE, 0xFF)) {
      return new Decoded(withoutMark(new String(content, StandardCharsets.UTF_16BE)), "UTF-16 (big endian)", true);
    }
    return unmarked(content);
  }

  private static Decoded unmarked(byte[] content) {
    int even = zeros(content, 0);
    int odd = zeros(content, 1);
    int half = Math.min(content.length, LOOKED_AT) / 2;
    if (odd > 0.4 * half && even < 0.05 * half) {
      return new Decoded(new String(content, StandardCharsets.UTF_16LE), "UTF-16 (little endian, without mark)", true);
    }
    if (even > 0.4 * half && odd < 0.05 * half) {
      return new Decoded(new String(content, StandardCharsets.UTF_16BE), "UTF-16 (big endian, without mark)", true);
    }
    Optional<String> utf8 = strict(content, StandardCharsets.UTF_8);
    if (utf8.isPresent()) {
      return new Decoded(utf8.get(), "UTF-8", true);
    }
    boolean latin = !anyBetween(content, 0x80, 0x9F);
    return latin ? new Decoded(new String(content, StandardCharsets.ISO_8859_1), "Latin-1 (ISO-8859-1)", false)
        : new Decoded(new String(content, WINDOWS), "Windows-1252", false);
  }

  private static Optional<String> strict(byte[] content, Charset charset) {
    try {
      return Optional.of(charset.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(content)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static boolean starts(byte[] content, int... mark) {
    return content.length >= mark.length
        && Arrays.equals(Arrays.copyOf(content, mark.length), toBytes(mark));
  }

  private static byte[] toBytes(int[] values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
  }

  private static int zeros(byte[] content, int from) {
    int zeros = 0;
    for (int i = from; i < Math.min(content.length, LOOKED_AT); i += 2) {
      zeros += content[i] == 0 ? 1 : 0;
    }
    return zeros;
  }

  private static boolean anyBetween(byte[] content, int low, int high) {
    for (byte b : content) {
      int value = b & 0xFF;
      if (value >= low && value <= high) {
        return true;
      }
    }
    return false;
  }
}
