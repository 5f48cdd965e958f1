package daubline.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a table is a table of. */
public enum Target {
  /** One row a trial. */
  TRIALS("trials"),
  /** One row a cited statement about remains. */
  CLAIMS("claims"),
  /** One row a class of residue of one trial or evidence sheet. */
  RESIDUES("residues"),
  /** One row an analysis, one column an oxide or element; or one row a component. */
  ANALYSES("analyses"),
  /** One row an entry of a run log. */
  LOG("log"),
  /** One row a lot of material. */
  LOTS("lots"),
  /** One row a publication. */
  CITATIONS("citations");

  private final String word;

  Target(String word) {
    this.word = word;
  }

  /** The word by which commands and settings name it. */
  public String word() {
    return word;
  }

  /** The target of a word. */
  public static Optional<Target> find(String word) {
    return Arrays.stream(values()).filter(t -> t.word.equals(word.strip().toLowerCase(Locale.ROOT))).findFirst();
  }

  /** All words, for help and messages. */
  public static String words() {
    return List.of(values()).stream().map(Target::word).collect(Collectors.joining(", "));
  }
}
