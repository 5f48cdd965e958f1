package daubline.ui;

import java.util.List;

/** The ids of the editors and views, as the extensions name them. */
public final class Parts {

  /** The start page. */
  public static final String HEARTHSIDE = "daubline.ui.hearthside";
  /** The editor of a sheet: the values of one trial, evidence sheet, reconstruction or lot. */
  public static final String SHEET = "daubline.ui.sheet";
  /** The study as a tree. */
  public static final String STUDY = "daubline.ui.study";

  /** All views, in the order in which menus show them. */
  public static final List<String> VIEWS = List.of(STUDY);

  private Parts() {
  }
}
