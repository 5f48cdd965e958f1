package daubline.engine.inference;

import java.util.Map;

/**
 * What was chosen for a trial, by variable id; planned or as built, whichever the caller wants to tell trials apart by.
 *
 * @param trial id of the trial
 * @param numbers numbers in canonical units
 * @param words words
 */
public record Recipe(String trial, Map<String, Double> numbers, Map<String, String> words) {

  public Recipe {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
  }
}
