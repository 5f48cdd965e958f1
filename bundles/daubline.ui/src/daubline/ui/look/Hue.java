package daubline.ui.look;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;

/**
 * The colours of the window. Their values are colour definitions of the platform (plugin.xml), which each theme's style
 * sheet may change; nothing else in the window names a colour.
 */
public enum Hue {
  /** Background of pages. */
  ASH,
  /** Background of grids and fields. */
  PAPER,
  /** Text and outlines. */
  INK,
  /** Secondary text and hairlines. */
  QUIET,
  /** Lines of grids. */
  HAIRLINE,
  /** Headings of groups and columns. */
  BAND,
  /** The selected cell and row. */
  CHOSEN,
  /** The one accent. */
  OCHRE,
  /** Consistent. */
  POND,
  /** Not consistent. */
  LINING,
  /** Notes and what is guessed. */
  HEATHER;

  private static final String PREFIX = "daubline.ui.hue.";

  /** Its id among the colour definitions. */
  public String id() {
    return PREFIX + name().toLowerCase(java.util.Locale.ROOT);
  }

  /** The colour in the theme of this moment; the platform disposes of it. */
  public Color color() {
    Color color = JFaceResources.getColorRegistry().get(id());
    return color == null ? org.eclipse.swt.widgets.Display.getCurrent().getSystemColor(org.eclipse.swt.SWT.COLOR_LIST_FOREGROUND) : color;
  }

  /** Whether the theme is light writing on dark ground. */
  public static boolean isDark() {
    return brightness(PAPER.color().getRGB()) < brightness(INK.color().getRGB());
  }

  private static double brightness(RGB rgb) {
    return 0.2126 * rgb.red + 0.7152 * rgb.green + 0.0722 * rgb.blue;
  }
}
