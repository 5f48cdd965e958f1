package daubline.validation;

import daubline.charts.Figure;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A page in the making: paragraphs, tables and plots, kept as Markdown. */
public final class Page {

  /** The folder of the plots, beside the page. */
  static final String PLOTS = "validation";

  private final StringBuilder markdown = new StringBuilder();
  private final Map<String, Figure> figures = new LinkedHashMap<>();

  /** A heading of the first or second rank. */
  void heading(int rank, String title) {
    block("#".repeat(rank) + " " + title);
  }

  /** A heading inside a section. */
  public Page part(String title) {
    heading(3, title);
    return this;
  }

  /** A paragraph, broken into lines that a reader of the source can follow. */
  public Page text(String text) {
    StringBuilder lines = new StringBuilder();
    int length = 0;
    for (String word : text.strip().split("\\s+")) {
      boolean next = length > 0 && length + 1 + word.length() > 118;
      lines.append(length == 0 ? "" : next ? "\n" : " ").append(word);
      length = next ? word.length() : length + 1 + word.length();
    }
    return block(lines.toString());
  }

  /** Lines with a bullet each. */
  public Page list(List<String> lines) {
    return lines.isEmpty() ? this : block(lines.stream().map(l -> "- " + l).collect(Collectors.joining("\n")));
  }

  /** A table; every row has as many cells as there are heads. */
  public Page table(List<String> heads, List<List<String>> rows) {
    StringBuilder table = new StringBuilder(row(heads)).append('\n').append("|---".repeat(heads.size())).append("|");
    for (List<String> cells : rows) {
      if (cells.size() != heads.size()) {
        throw new IllegalArgumentException("a row of " + cells.size() + " cells under " + heads.size() + " heads: " + cells);
      }
      table.append('\n').append(row(cells));
    }
    return block(table.toString());
  }

  /**
   * A plot with its caption.
   *
   * @param name the name of its file without ending, lower case with hyphens
   */
  public Page figure(String name, Figure figure) {
    if (figures.putIfAbsent(name, figure) != null) {
      throw new IllegalArgumentException("two plots have the name " + name);
    }
    block("![" + name.replace('-', ' ') + "](" + PLOTS + "/" + name + ".svg)");
    return text("*" + figure.caption() + "*");
  }

  /** The page as Markdown. */
  String markdown() {
    return markdown.toString();
  }

  /** The plots by the name of their file. */
  Map<String, Figure> figures() {
    return Collections.unmodifiableMap(figures);
  }

  private Page block(String text) {
    markdown.append(markdown.isEmpty() ? "" : "\n").append(text).append('\n');
    return this;
  }

  private static String row(List<String> cells) {
    return cells.stream().map(c -> c.replace("|", "\\|")).collect(Collectors.joining(" | ", "| ", " |"));
  }
}
