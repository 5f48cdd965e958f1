package daubline.analysis;

import daubline.base.Unit;
import daubline.criteria.Criteria;
import daubline.criteria.Repeats;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;

/**
 * The spread of repeats on one criterion, to print: every figure in the unit shown.
 *
 * @param criterion the criterion's name
 * @param unit unit of its tolerance
 * @param spread pooled standard deviation within recipes
 * @param low lower end of its 90 % interval
 * @param high upper end of its 90 % interval
 * @param freedom degrees of freedom behind it
 * @param recipes number of recipes with two repeats or more
 * @param asTolerance the tolerance it would make
 * @param now the tolerance of the study
 */
public record RepeatSpread(String criterion, Unit unit, double spread, double low, double high, int freedom, int recipes, double asTolerance, double now) {

  static RepeatSpread of(Repeats r, ComparisonSettings settings) {
    Criterion criterion = Criteria.find(r.criterion()).orElseThrow();
    Setting tolerance = criterion.settings().stream().filter(s -> s.key().equals(Repeats.SETTING)).findFirst().orElseThrow();
    Unit unit = tolerance.unit().orElseThrow();
    return new RepeatSpread(criterion.name(), unit, unit.differenceFromCanonical(r.spread()), unit.differenceFromCanonical(r.low()),
        unit.differenceFromCanonical(r.high()), r.freedom(), r.recipes(), unit.differenceFromCanonical(r.tolerance()),
        unit.differenceFromCanonical(settings.of(criterion).number(Repeats.SETTING)));
  }
}
