package daubline.export.format;

import daubline.analysis.record.CitationData;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Citations as tagged lines (RIS), in UTF-8, so that reading them again gives the same. */
public final class Ris {

  private static final Map<String, String> TYPES = Map.of("article", "JOUR", "book", "BOOK", "chapter", "CHAP", "conference paper", "CPAPER", "thesis",
      "THES", "report", "RPRT", "web page", "ELEC", "unpublished", "UNPB", "data set", "DATA");

  private Ris() {
  }

  /** The whole file. */
  public static String of(List<CitationData> citations) {
    return citations.stream().map(Ris::entry).collect(Collectors.joining("\n"));
  }

  private static String entry(CitationData c) {
    String type = TYPES.getOrDefault(c.kind(), "GEN");
    String[] pages = c.pages().matches("\\w+[-–]\\w+") ? c.pages().split("[-–]") : new String[] {c.pages(), ""};
    return line("TY", type) + line("ID", c.id()) + names("AU", c.authors()) + line("PY", c.year()) + line("TI", c.title()) + names("A2", c.editors())
        + line("T2", c.container()) + line("VL", c.volume()) + line("IS", c.issue()) + line("SP", pages[0]) + line("EP", pages[1])
        + line("PB", c.publisher()) + line("CY", c.place()) + line("DO", c.doi()) + line("SN", c.isbn()) + line("UR", c.url())
        + line("M3", type.equals("GEN") ? c.kind() : "") + line("N1", c.note()) + "ER  - \n";
  }

  private static String names(String tag, String printed) {
    return Stream.of(printed.split("\\s*;\\s*|\\s+(?:and|und|&)\\s+")).map(n -> line(tag, n)).collect(Collectors.joining());
  }

  private static String line(String tag, String text) {
    String plain = text.replaceAll("\\s+", " ").strip();
    return plain.isEmpty() ? "" : tag + "  - " + plain + "\n";
  }
}
