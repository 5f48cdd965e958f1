package daubline.intake.raw;

import daubline.base.Finding;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Bibliographic files as tables of citations. Two plain formats are read: BibTeX, as the manual of its version 0.99
 * describes it (O. Patashnik, BibTeXing, 1988), and RIS, as its tagged lines are in use (from memory).
 */
final class Bibliographies {

  private static final Pattern BIBTEX = Pattern.compile("(?m)^\\s*@\\s*[A-Za-z]+\\s*[{(]");
  private static final Pattern RIS = Pattern.compile("(?m)^TY {1,2}- ?");

  private Bibliographies() {
  }

  /** Whether a text is a bibliographic file. */
  static boolean is(String text) {
    return RIS.matcher(text).find() || BIBTEX.matcher(text).find() && text.indexOf('=') > 0;
  }

  /** Reads one; every entry is a row whose number is the line it begins in. */
  static RawFile read(String name, Encodings.Decoded decoded) {
    List<Finding> findings = new ArrayList<>();
    Set<String> unread = new TreeSet<>();
    boolean ris = RIS.matcher(decoded.text()).find();
    List<BibEntry> entries = ris ? new RisReader(name, findings, unread).read(decoded.text()) : new BibTexReader(name, findings, unread).read(decoded.text());
    if (!decoded.certain()) {
      findings.add(Finding.warning("file.encoding", name, "the encoding is not marked; it is read as " + decoded.how(),
          "look at accents; if they are wrong, state the encoding"));
    }
    if (!unread.isEmpty()) {
      findings.add(Finding.note("bib.unread", name, "a citation has no place for: " + String.join(", ", unread), "they stay in the file"));
    }
    Set<String> keys = new HashSet<>();
    List<RawRow> rows = new ArrayList<>(List.of(new RawRow(0, BibEntry.COLUMNS.stream().map(RawCell::text).toList())));
    for (BibEntry entry : entries) {
      name(name, entry, keys, findings);
      rows.add(new RawRow(entry.line(), BibEntry.COLUMNS.stream().map(c -> RawCell.text(entry.get(c))).toList()));
    }
    return new RawFile(name, decoded.how() + ", " + (ris ? "RIS" : "BibTeX") + ", rows counted by line", List.of(new RawSheet("", rows, List.of())), findings);
  }

  private static void name(String name, BibEntry entry, Set<String> keys, List<Finding> findings) {
    if (entry.get("key").isEmpty()) {
      String own = entry.ownKey();
      String key = own;
      for (int i = 2; !own.isEmpty() && keys.contains(key); i++) {
        key = own + "-" + i;
      }
      entry.put("key", key);
      if (!key.isEmpty()) {
        findings.add(Finding.note("bib.key", name + ", line " + entry.line(), "the entry has no key and gets “" + key + "”",
            "give it a key in the file to choose another"));
      }
    }
    keys.add(entry.get("key"));
  }
}
