package daubline.engine.design.learn;

import daubline.engine.design.Term;

/**
 * What one column of the model did to the outcome, in the outcome's unit.
 *
 * @param name the name of the column
 * @param term its term
 * @param change what the estimate is the effect of, such as "from 200 to 600 L/min"
 * @param estimate the effect
 * @param standardError its standard error; NaN when the trials cannot show it
 * @param freedom degrees of freedom of the error; 0 when there are none
 * @param low the lower end of the interval, NaN without error
 * @param high the upper end
 * @param p the probability of an effect as large out of chance, NaN without error
 * @param smallest the size that would have been seen four times in five; infinite without error
 * @param stratum what it changes with: "trial", "furnace" or "day"
 * @param separable whether it can be told from the difference between furnaces, or between days
 * @param aliases what the estimate could as well be, such as "charge × ore, or in part air × ore"; empty when nothing
 * @param permutation the second opinion from dealing the settings out anew
 * @param sentence all of it in words
 */
public record Effect(String name, Term term, String change, double estimate, double standardError, double freedom, double low,
    double high, double p, double smallest, String stratum, boolean separable, String aliases, Permutation permutation,
    String sentence) {
}
