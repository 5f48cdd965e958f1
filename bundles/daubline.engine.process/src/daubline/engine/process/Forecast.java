package daubline.engine.process;

import java.util.Map;

/**
 * One quantity of a forecast.
 *
 * @param quantity what it is, with label, unit, source and standing
 * @param central value of the middle course, every input at its median
 * @param median median of the draws
 * @param low 5 % point of the draws
 * @param high 95 % point of the draws
 * @param shares share of the variance that each input alone explains, largest first; left out below 2 % or what may be chance
 */
public record Forecast(BurnQuantity quantity, double central, double median, double low, double high,
    Map<String, Double> shares) {
}
