package daubline.engine.design.advise;

import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.search.Criterion;
import java.util.List;

/** What a series is burnt for. */
public enum Question {
  /** Which of many factors matter at all. */
  WHICH_MATTER("which factors matter"),
  /** How large the effects are, and how factors change each other's. */
  HOW_MUCH("how much each moves the outcome, and whether one changes what another does"),
  /** Where the outcome is best, with bent responses. */
  BEST_SETTING("which setting does best"),
  /** What happens anywhere in the region, without a model. */
  EXPLORE("what happens where");

  private final String word;

  Question(String word) {
    this.word = word;
  }

  /** In words. */
  public String word() {
    return word;
  }

  /** The model that answers it. */
  public Model model(List<Factor> factors) {
    return switch (this) {
      case WHICH_MATTER, EXPLORE -> Model.main(factors);
      case HOW_MUCH -> Model.interactions(factors);
      case BEST_SETTING -> Model.quadratic(factors);
    };
  }

  /** What an optimal design for it is best at. */
  public Criterion criterion() {
    return this == BEST_SETTING || this == EXPLORE ? Criterion.PREDICTION : Criterion.EFFECTS;
  }
}
