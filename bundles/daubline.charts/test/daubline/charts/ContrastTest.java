package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Contrast of the colours of the window and of figures. Formula and limits: W3C, Web Content Accessibility Guidelines 2.2,
 * definitions “relative luminance” and “contrast ratio”; success criteria 1.4.3 (text 4.5 to 1) and 1.4.11 (graphics 3 to 1).
 */
class ContrastTest {

  private static final double TEXT = 4.5;
  private static final double GRAPHICS = 3;
  private static final List<String> WRITING = List.of("ink", "quiet", "ochre", "pond", "lining", "heather");
  private static final List<String> GROUNDS = List.of("ash", "paper", "band", "chosen");
  private static final Pattern DEFINITION = Pattern.compile("hue-(\\w+) \\{\\s*color: #(\\p{XDigit}{6})");

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
  }

  static double contrast(Color one, Color other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static Map<String, Color> theme(String name) throws IOException {
    Map<String, Color> colours = new HashMap<>();
    Matcher m = DEFINITION.matcher(Files.readString(Path.of("bundles/daubline.app/css", name + ".css")));
    while (m.find()) {
      colours.put(m.group(1), Color.decode("#" + m.group(2)));
    }
    return colours;
  }

  @Test
  void theFormulaGivesTheEndsOfItsScale() {
    assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
    assertEquals(1, contrast(Color.GRAY, Color.GRAY), 1e-9);
  }

  @Test
  void everyWritingIsReadableOnEveryGroundInEveryTheme() throws IOException {
    List<String> weak = new ArrayList<>();
    for (String name : List.of("ash", "night", "sun")) {
      Map<String, Color> theme = theme(name);
      for (String ink : WRITING) {
        GROUNDS.stream().filter(g -> contrast(theme.get(ink), theme.get(g)) < TEXT)
            .forEach(g -> weak.add(name + ": " + ink + " on " + g + " " + contrast(theme.get(ink), theme.get(g))));
      }
    }
    assertEquals(List.of(), weak);
  }

  @Test
  void seriesStandOutFromThePaperAndLetteringIsReadable() {
    List<String> weak = new ArrayList<>();
    for (Palette palette : List.of(Palette.PRINT, Palette.DARK)) {
      palette.series().stream().filter(c -> contrast(c, palette.paper()) < GRAPHICS).forEach(c -> weak.add(c + " on " + palette.paper()));
      List.of(palette.ink(), palette.quiet()).stream().filter(c -> contrast(c, palette.paper()) < TEXT).forEach(c -> weak.add("lettering " + c));
    }
    assertEquals(List.of(), weak);
  }
}
