package daubline.intake;

import daubline.base.IronBasis;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Recognises oxides and elements by the way headings name them. */
final class Formulas {

  private static final Set<String> ELEMENTS =
      Set.of(("H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr "
      + "Rb Sr Y Zr Nb Mo Tc Ru Rh Pd Ag Cd In Sn Sb Te I Xe Cs Ba La Ce Pr Nd Pm Sm Eu Gd Tb Dy Ho Er Tm Yb Lu Hf Ta W "
      + "Re Os Ir Pt Au Hg Tl Pb Bi Th U")
      .split(" "));
  private static final Map<String, String> OTHERS = Map.of("loi", "LOI", "l o i", "LOI", "loss on ignition", "LOI",
      "ignition loss", "LOI", "h2o+", "H2O+", "h2o-", "H2O-");
  private static final Pattern SUBSCRIPTS = Pattern.compile("[\u2080-\u2089]");
  private static final String ALL = "(?:t|T|tot|total|Total|ges|ges\\.|gesamt)";
  /** All iron given as one of three, as headings say it: FeO(t), Fe2O3 total, FeO*, total Fe, TFe, ΣFeO. */
  private static final Pattern TOTAL_IRON = Pattern.compile("(FeO|Fe2O3|Fe)\\s*[_*,]?\\s*\\(?\\s*" + ALL + "\\.?\\s*\\)?|(FeO|Fe2O3)\\*"
      + "|(?:[Tt]otal|[Tt]ot\\.?|T|Σ|[Gg]esamt|[Gg]es\\.)[\\s-]*(FeO|Fe2O3|Fe)");
  /** Metallic iron: Fe met, Fe metal, metallic Fe, Fe0. */
  private static final Pattern METAL = Pattern.compile("Fe\\s*[_,]?\\s*\\(?(?:0|⁰|°|met|met\\.|metal|metall|metallic)\\)?|(?:[Mm]et\\.|[Mm]etallic|[Mm]etal|[Mm]et|[Mm]etallisches)[\\s-]+Fe");
  private static final Pattern PART = Pattern.compile("([A-Z][a-z]?)(\\d*)");
  private static final Pattern DECORATION = Pattern.compile("\\s+(wt\\.?\\s*%?|oxide|conc\\.?|norm\\.?)$",
      Pattern.CASE_INSENSITIVE);

  private Formulas() {
  }

  /** The formula that a heading names, as tables print it. */
  static Optional<String> symbol(String heading) {
    String text = plain(heading);
    Matcher total = TOTAL_IRON.matcher(text);
    if (total.matches()) {
      return Optional.of(iron(total));
    }
    if (METAL.matcher(text).matches()) {
      return Optional.of("Fe");
    }
    String other = OTHERS.get(Heading.key(text));
    return other != null ? Optional.of(other) : Optional.of(text).filter(Formulas::isFormula);
  }

  private static String iron(Matcher total) {
    return total.group(1) != null ? total.group(1) : total.group(2) != null ? total.group(2) : total.group(3);
  }

  /** The iron basis that a heading itself states: FeO total, Fe2O3(t), FeO*, total Fe, metallic Fe. */
  static Optional<IronBasis> ironBasis(String heading) {
    Matcher total = TOTAL_IRON.matcher(plain(heading));
    if (total.matches()) {
      return Optional.of(switch (iron(total)) {
        case "FeO" -> IronBasis.FEO;
        case "Fe2O3" -> IronBasis.FE2O3;
        default -> IronBasis.FE;
      });
    }
    return METAL.matcher(plain(heading)).matches() ? Optional.of(IronBasis.WITH_METAL) : Optional.empty();
  }

  /** What a heading says of its iron, for telling two columns of the same formula apart; empty for nothing. */
  static String iron(String heading) {
    return ironBasis(heading).map(IronBasis::name).orElse("");
  }

  /** Whether a formula is one of an oxide, which laboratories give in per cent; elements come in several units. */
  static boolean isOxide(String symbol) {
    return symbol.endsWith("O") || symbol.matches(".*O\\d+") || symbol.startsWith("H2O") || symbol.equals("LOI");
  }

  /** Whether a column of the form is one of components: an element, an oxide or loss on ignition. */
  static boolean isNamed(String id) {
    return OTHERS.containsValue(id) || isFormula(id);
  }

  private static String plain(String heading) {
    String text = SUBSCRIPTS.matcher(heading.strip()).replaceAll(m ->
        String.valueOf((char) ('0' + m.group().charAt(0) - '\u2080')));
    return DECORATION.matcher(text).replaceAll("");
  }

  private static boolean isFormula(String text) {
    Matcher m = PART.matcher(text);
    int end = 0;
    while (m.find() && m.start() == end && ELEMENTS.contains(m.group(1))) {
      end = m.end();
    }
    return end == text.length() && end > 0;
  }
}
