package daubline.seeds;

import daubline.base.Printed;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Six hours of an invented data logger, once a second, eight channels: curves that follow the charges of a recipe, with
 * noise, a gap while the battery was changed, and sensors that fail.
 */
final class StationLog {

  static final List<String> CHANNELS = List.of("temperature_base", "temperature_above_inlet", "temperature_mid_shaft",
      "temperature_top", "temperature_outer_wall", "air_flow", "inlet_pressure", "air_temperature");
  static final List<String> UNITS = List.of("°C", "°C", "°C", "°C", "°C", "L/min", "Pa", "°C");
  static final LocalTime START = LocalTime.of(9, 41, 15);
  static final int SECONDS = 6 * 3600;
  private static final double SATURATED = 806;
  private static final int GAP_FROM = 3 * 3600 + 420;
  private static final int GAP_UNTIL = GAP_FROM + 395;
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Recipe recipe;
  private final double warmBefore;
  private final SplittableRandom random;

  /**
   * A log of one recipe.
   *
   * @param warmBefore minutes the fire had burnt when the logger was started
   */
  StationLog(Recipe recipe, double warmBefore, long seed) {
    this.recipe = recipe;
    this.warmBefore = warmBefore;
    this.random = new SplittableRandom(seed);
  }

  /** The file as the logger wrote it: semicolons, decimal comma, two header lines. */
  byte[] file() {
    StringBuilder text = new StringBuilder("Aldervale station log;box 2;;;;;;;\nTime");
    for (int i = 0; i < CHANNELS.size(); i++) {
      text.append(';').append(CHANNELS.get(i).replace('_', ' ')).append(" (").append(UNITS.get(i)).append(')');
    }
    text.append('\n');
    for (int second = 0; second < SECONDS; second++) {
      String row = row(second);
      if (second < GAP_FROM || second >= GAP_UNTIL) {
        text.append(row);
      }
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private String row(int second) {
    double minutes = warmBefore + second / 60.0;
    double blast = Math.max(0, Math.min(1, (minutes - 10) / 40)) * (minutes < recipe.end() ? 1 : 0.05);
    double sinceCharge = minutes < recipe.firstOre() ? 8 : (minutes - recipe.firstOre()) % recipe.interval();
    double cold = StrictMath.exp(-sinceCharge / 4);
    double rise = 1 - StrictMath.exp(-minutes / 45);
    double hot = recipe.of("peak");
    StringBuilder row = new StringBuilder(START.plusSeconds(second).format(TIME));
    cell(row, minutes > 385 ? "removed" : null, 60 + (hot - 320) * rise + noise(3), 0);
    cell(row, null, 90 + (hot - 190) * rise * (0.9 + 0.1 * blast) - 40 * cold + noise(6), 0);
    cell(row, minutes > 262 ? "open" : null, 70 + (hot - 560) * rise - 60 * cold + noise(5), 0);
    cell(row, null, 40 + 430 * rise * blast - 190 * cold + noise(9), 0);
    cell(row, null, 18 + 130 * (1 - StrictMath.exp(-minutes / 160)) + noise(0.6), 0);
    double flow = recipe.of("air") * blast * (0.97 + 0.03 * StrictMath.sin(second * 8.9)) + noise(9);
    cell(row, flow > SATURATED ? "saturated" : null, Math.max(0, flow), 0);
    cell(row, null, Math.max(0, 780 * blast * blast + 90 * cold * blast + noise(14)), 0);
    cell(row, null, 16 + 6 * StrictMath.sin(Math.PI * second / 36000) + noise(0.1), 1);
    return row.append('\n').toString();
  }

  private double noise(double size) {
    return size * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5);
  }

  private static void cell(StringBuilder row, String state, double value, int decimals) {
    row.append(';').append(state != null ? state : Printed.fixed(value, decimals).replace('.', ','));
  }
}
