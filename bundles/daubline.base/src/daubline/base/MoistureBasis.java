package daubline.base;

import java.util.Optional;
import java.util.stream.Stream;

/** What a share of water is a share of; without it the share means nothing. */
public enum MoistureBasis {
  /** Water over the moist mass, 0 to below 1. */
  WET("wet"),
  /** Water over the dry mass; may exceed 1. */
  DRY("dry");

  private final String word;

  MoistureBasis(String word) {
    this.word = word;
  }

  /** The word that studies keep and tables print. */
  public String word() {
    return word;
  }

  /** The basis of a word; empty when the word is none, or missing. */
  public static Optional<MoistureBasis> find(String word) {
    return Stream.of(values()).filter(b -> word != null && b.word.equalsIgnoreCase(word.strip())).findFirst();
  }
}
