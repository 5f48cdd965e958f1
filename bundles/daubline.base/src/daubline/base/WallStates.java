package daubline.base;

import java.util.List;

/** What the fire did to a patch of wall, in the words in which a study keeps it; a study may use words of its own beside. Common practice, no source. */
public final class WallStates {

  /** In the order of keys. */
  public static final List<String> STANDARD = List.of("vitrified", "reduced", "oxidised", "slagged", "lost", "unchanged", "soft");

  private WallStates() {
  }
}
