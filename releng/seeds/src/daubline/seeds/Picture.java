package daubline.seeds;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.Adler32;
import java.util.zip.CRC32;

/**
 * A small placeholder for a photograph: a furnace of plain colours with a scale bar. Written as PNG with stored blocks
 * (PNG specification, W3C; RFC 1950, RFC 1951), so that the bytes do not depend on the compressor of the machine.
 */
final class Picture {

  private static final int WIDTH = 120;
  private static final int HEIGHT = 90;
  private static final int GROUND = 72;
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int[] COLOURS = {0xCFD8DC, 0x7A8B5A, 0x9C6B4A, 0x3B2A22, 0xFFC56B, 0xE0552B, 0xFFFFFF, 0x14171C};
  private static final int SKY = 0;
  private static final int GRASS = 1;
  private static final int WALL = 2;
  private static final int DARK = 3;
  private static final int FLAME = 4;
  private static final int GLOW = 5;
  private static final int WHITE = 6;
  private static final int BLACK = 7;

  private Picture() {
  }

  /** A picture of a furnace that is standing, burning or a ruin. */
  static byte[] of(String look) {
    byte[] rows = new byte[HEIGHT * (WIDTH + 1)];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        rows[y * (WIDTH + 1) + 1 + x] = (byte) colour(x, y, look);
      }
    }
    return png(rows);
  }

  private static int colour(int x, int y, String look) {
    int top = look.equals("ruin") ? 52 + x * 7 % 9 : 24;
    double half = 12 + (y - 24) * 0.18;
    int fromMiddle = Math.abs(x - WIDTH / 2);
    if (y > 82 && y < 86 && x > 10 && x < 60) {
      return x / 10 % 2 == 0 ? BLACK : WHITE;
    }
    if (look.equals("burning") && y < top && y > 6 && fromMiddle < (y - 6) * 0.6) {
      return fromMiddle < (y - 6) * 0.3 ? GLOW : FLAME;
    }
    if (y >= top && y < GROUND && fromMiddle < half) {
      boolean opening = y > GROUND - 14 && fromMiddle < 6;
      return opening ? look.equals("burning") ? GLOW : DARK : fromMiddle < half - 7 && y < top + 4 ? DARK : WALL;
    }
    return y < GROUND ? SKY : GRASS;
  }

  private static byte[] png(byte[] rows) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.write(SIGNATURE);
      chunk(out, "IHDR", header());
      chunk(out, "PLTE", palette());
      chunk(out, "IDAT", stored(rows));
      chunk(out, "IEND", new byte[0]);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static byte[] header() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(WIDTH);
    out.writeInt(HEIGHT);
    out.write(new byte[] {8, 3, 0, 0, 0});
    return bytes.toByteArray();
  }

  private static byte[] palette() {
    byte[] palette = new byte[COLOURS.length * 3];
    for (int i = 0; i < COLOURS.length; i++) {
      palette[3 * i] = (byte) (COLOURS[i] >> 16);
      palette[3 * i + 1] = (byte) (COLOURS[i] >> 8);
      palette[3 * i + 2] = (byte) COLOURS[i];
    }
    return palette;
  }

  /** A zlib stream of one stored block; the data must be shorter than 65 536 bytes. */
  private static byte[] stored(byte[] data) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    int size = data.length;
    out.write(new byte[] {0x78, 0x01, 1, (byte) size, (byte) (size >> 8), (byte) ~size, (byte) (~size >> 8)});
    out.write(data);
    Adler32 check = new Adler32();
    check.update(data);
    out.writeInt((int) check.getValue());
    return bytes.toByteArray();
  }

  private static void chunk(DataOutputStream out, String type, byte[] data) throws IOException {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(data);
    out.writeInt(data.length);
    out.write(name);
    out.write(data);
    out.writeInt((int) check.getValue());
  }
}
