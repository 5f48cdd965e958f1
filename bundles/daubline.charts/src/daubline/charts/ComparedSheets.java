package daubline.charts;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The comparisons of a study by evidence sheet, the best agreement first, as many as a page holds. */
final class ComparedSheets {

  private static final Comparator<Comparison> BEST_FIRST = Comparator.<Comparison>comparingDouble(c -> Double.isNaN(c.agreement()) ? -1 : c.agreement())
      .reversed().thenComparing(Comparison::trialName).thenComparing(Comparison::trial);

  private final List<List<Comparison>> panels;
  private final int leftOut;

  private ComparedSheets(List<List<Comparison>> panels, int leftOut) {
    this.panels = panels;
    this.leftOut = leftOut;
  }

  /**
   * Groups comparisons.
   *
   * @param results what was compared
   * @param rows how many comparisons there is room for; sheets of which most could be tested come first
   */
  static ComparedSheets of(StudyResults results, int rows) {
    Map<String, List<Comparison>> bySheet = new LinkedHashMap<>();
    results.comparisons().stream().filter(Comparison::isTested)
        .forEach(c -> bySheet.computeIfAbsent(c.sheet(), s -> new ArrayList<>()).add(c));
    List<List<Comparison>> sheets = new ArrayList<>(bySheet.values());
    sheets.sort(Comparator.comparingDouble(ComparedSheets::coverage).reversed());
    List<List<Comparison>> chosen = new ArrayList<>();
    int left = rows;
    for (List<Comparison> sheet : sheets) {
      if (chosen.isEmpty() || sheet.size() <= left) {
        chosen.add(sheet.stream().sorted(BEST_FIRST).limit(rows).toList());
        left -= sheet.size();
      }
    }
    int shown = chosen.stream().mapToInt(List::size).sum();
    return new ComparedSheets(chosen, bySheet.values().stream().mapToInt(List::size).sum() - shown);
  }

  private static double coverage(List<Comparison> sheet) {
    return sheet.stream().mapToDouble(Comparison::coverage).max().orElse(0);
  }

  /** One list for each sheet. */
  List<List<Comparison>> panels() {
    return panels;
  }

  int rows() {
    return panels.stream().mapToInt(List::size).sum();
  }

  /** A sentence for the caption; empty when everything is shown. */
  String remark() {
    return leftOut == 0 ? "" : " The sheets of which most could be tested are drawn; " + leftOut + " more comparisons stand in the ranking table.";
  }
}
