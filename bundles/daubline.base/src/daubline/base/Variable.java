package daubline.base;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One variable of the catalogue. A trial and an evidence sheet hold values keyed by its id, so that each variable of a
 * trial stands beside the evidence it is meant to agree with.
 *
 * @param id stable short name, lower case with underscores
 * @param name what screens and tables print
 * @param group where forms place it
 * @param type what its values are
 * @param quantity what it measures; NUMBER for other types than numbers
 * @param unit the usual unit of entry and print
 * @param plausibleLow canonical lower end of the plausible range, NaN when open
 * @param plausibleHigh canonical upper end of the plausible range, NaN when open
 * @param places where it is recorded
 * @param words the words of a category, in order
 * @param ordered whether the words have an order of their own
 * @param evidencedBy how remains can show it; empty when they cannot
 * @param meaning what it is, how it is measured and why it is asked
 * @param source where the definition or the plausible range comes from
 */
public record Variable(String id, String name, String group, ValueType type, Quantity quantity, Unit unit,
    double plausibleLow, double plausibleHigh, Set<Place> places, List<String> words, boolean ordered,
    String evidencedBy, String meaning, String source) {

  /** Where a variable is recorded. */
  public enum Place {
    /** In the plan of a trial or in a reconstruction. */
    PLANNED,
    /** On the finished furnace. */
    BUILT,
    /** During the fire. */
    FIRED,
    /** On remains, excavated or experimental alike. */
    REMAINS,
    /** On a lot of material. */
    LOT,
    /** On a product or piece. */
    PIECE,
    /** In the run log. */
    LOG
  }

  public Variable {
    Objects.requireNonNull(id);
    Objects.requireNonNull(unit);
    places = Set.copyOf(places);
    words = List.copyOf(words);
    if (plausibleLow > plausibleHigh) {
      throw new IllegalArgumentException("The plausible range of " + id + " is upside down");
    }
  }

  /** Whether it is recorded at a place. */
  public boolean isAt(Place place) {
    return places.contains(place);
  }

  /** Reads a typed value of this variable. */
  public Typed read(String text, Unit typedIn, DecimalSign decimal) {
    AmountReader reader = new AmountReader(decimal);
    return switch (type) {
      case NUMBER -> reader.number(text, typedIn);
      case YES_NO -> reader.yesNo(text);
      case CATEGORY -> reader.category(text, words);
      case TEXT -> reader.text(text);
    };
  }

  /** Whether a canonical number lies in the plausible range; true when no range is stated. */
  public boolean isPlausible(double canonical) {
    return !(canonical < plausibleLow) && !(canonical > plausibleHigh);
  }
}
