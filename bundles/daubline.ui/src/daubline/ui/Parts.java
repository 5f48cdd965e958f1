package daubline.ui;

import java.util.List;

/** The ids of the editors and views, as the extensions name them. */
public final class Parts {

  /** Two reconstructions by what differs. */
  public static final String RECONSTRUCTIONS = "daubline.ui.reconstructions";
  /** The start page. */
  public static final String HEARTHSIDE = "daubline.ui.hearthside";
  /** The editor of a sheet: the values of one trial, evidence sheet, reconstruction or lot. */
  public static final String SHEET = "daubline.ui.sheet";
  /** The study as a tree. */
  public static final String STUDY = "daubline.ui.study";
  /** What the checks found. */
  public static final String CHECKS = "daubline.ui.checks";
  /** Where the selected number came from. */
  public static final String WHERE_FROM = "daubline.ui.whereFrom";
  /** Trials beside evidence sheets, and the ranking. */
  public static final String COMPARISON = "daubline.ui.comparison";
  /** The reasons for one cell of the comparison. */
  public static final String REASONS = "daubline.ui.reasons";
  /** How far the order of the trials can be relied on. */
  public static final String RANKS = "daubline.ui.ranks";
  /** Weights and tolerances of the comparison. */
  public static final String WEIGHTS = "daubline.ui.weights";
  /** One trial beside what it is compared with, as a drawing. */
  public static final String BESIDE = "daubline.ui.beside";
  /** The tables of the publication. */
  public static final String TABLES = "daubline.ui.tables";
  /** Stop criteria, hazards and permissions of the day. */
  public static final String SAFETY = "daubline.ui.safety";
  /** The figures of the publication. */
  public static final String FIGURES = "daubline.ui.figures";

  /** What is written about the selected thing. */
  public static final String PROPERTIES = "daubline.ui.properties";
  /** What is being worked out, and how far it is; a view of the platform. */
  public static final String PROGRESS = "org.eclipse.ui.views.ProgressView";

  /** The day of the fire. */
  public static final String RUN_DAY = "daubline.ui.runday";

  /** All views, in the order in which menus show them. */
  public static final List<String> VIEWS = List.of(STUDY, CHECKS, WHERE_FROM, COMPARISON, REASONS, RANKS, WEIGHTS, BESIDE, RUN_DAY, SAFETY, TABLES, FIGURES,
      RECONSTRUCTIONS, PROPERTIES);

  private Parts() {
  }
}
