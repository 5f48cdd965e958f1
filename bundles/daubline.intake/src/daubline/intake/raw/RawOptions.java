package daubline.intake.raw;

import java.nio.charset.Charset;
import java.util.Optional;

/**
 * What a person says about how a file is to be read; what is left open is found out.
 *
 * @param charset the encoding of a CSV file
 * @param delimiter the sign between the cells of a CSV file
 */
public record RawOptions(Optional<Charset> charset, Optional<Character> delimiter) {

  /** Everything is found out. */
  public static final RawOptions NONE = new RawOptions(Optional.empty(), Optional.empty());
}
