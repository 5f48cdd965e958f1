package daubline.base;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What an element weighs as one of its oxides. Atomic weights: the abridged standard atomic weights of IUPAC (CIAAW 2021, from
 * memory); a test holds the factors against a printed table.
 */
public final class OxideFactors {

  /** The source of the factors, as it is printed beside a converted value. */
  public static final String SOURCE = "IUPAC standard atomic weights, CIAAW 2021";

  private static final double OXYGEN = 15.999;
  private static final Pattern OXIDE = Pattern.compile("([A-Z][a-z]?)(\\d*)O(\\d*)");
  private static final Map<String, Double> WEIGHTS = weights("Li 6.94, Be 9.0122, B 10.81, C 12.011, Na 22.990, Mg 24.305, Al 26.982, Si 28.085, P 30.974, "
      + "S 32.06, K 39.098, Ca 40.078, Sc 44.956, Ti 47.867, V 50.942, Cr 51.996, Mn 54.938, Fe 55.845, Co 58.933, Ni 58.693, Cu 63.546, Zn 65.38, Ga 69.723, "
      + "As 74.922, Rb 85.468, Sr 87.62, Y 88.906, Zr 91.224, Nb 92.906, Mo 95.95, Ag 107.87, Sn 118.71, Sb 121.76, Ba 137.33, La 138.91, Ce 140.12, "
      + "W 183.84, Pb 207.2, Th 232.04, U 238.03");
  /** The oxides that tables of slags, ores and clays print (common practice, no source), the usual one of an element first. */
  private static final Map<String, List<String>> OXIDES = oxides("Li2O BeO B2O3 CO2 Na2O MgO Al2O3 SiO2 P2O5 SO3 K2O CaO Sc2O3 TiO2 V2O5 Cr2O3 MnO MnO2 Mn3O4 "
      + "FeO Fe2O3 Fe3O4 CoO NiO CuO Cu2O ZnO Ga2O3 As2O3 Rb2O SrO Y2O3 ZrO2 Nb2O5 MoO3 Ag2O SnO2 Sb2O3 BaO La2O3 Ce2O3 CeO2 WO3 PbO ThO2 UO2 U3O8");

  private OxideFactors() {
  }

  private static Map<String, Double> weights(String text) {
    Map<String, Double> weights = new LinkedHashMap<>();
    for (String pair : text.split(", ")) {
      weights.put(pair.split(" ")[0], Double.valueOf(pair.split(" ")[1]));
    }
    return weights;
  }

  private static Map<String, List<String>> oxides(String text) {
    Map<String, List<String>> oxides = new LinkedHashMap<>();
    for (String oxide : text.split(" ")) {
      String element = element(oxide).orElseThrow();
      oxides.put(element, oxides.containsKey(element) ? join(oxides.get(element), oxide) : List.of(oxide));
    }
    return oxides;
  }

  private static List<String> join(List<String> some, String one) {
    String[] all = Arrays.copyOf(some.toArray(String[]::new), some.size() + 1);
    all[some.size()] = one;
    return List.of(all);
  }

  private static Optional<String> element(String oxide) {
    Matcher m = OXIDE.matcher(oxide);
    return m.matches() && WEIGHTS.containsKey(m.group(1)) ? Optional.of(m.group(1)) : Optional.empty();
  }

  /** The oxides as which an element may be given, the usual one first; none when its oxides are not printed. */
  public static List<String> of(String element) {
    return OXIDES.getOrDefault(element, List.of());
  }

  /**
   * The mass of an oxide that holds a unit mass of its element, such as 2.1393 for Si and SiO2.
   *
   * @return empty when the second is no oxide of the first
   */
  public static Optional<Double> factor(String element, String oxide) {
    Matcher m = OXIDE.matcher(oxide);
    if (!m.matches() || !m.group(1).equals(element) || !WEIGHTS.containsKey(element)) {
      return Optional.empty();
    }
    double metal = count(m.group(2)) * WEIGHTS.get(element);
    return Optional.of((metal + count(m.group(3)) * OXYGEN) / metal);
  }

  private static int count(String digits) {
    return digits.isEmpty() ? 1 : Integer.parseInt(digits);
  }
}
