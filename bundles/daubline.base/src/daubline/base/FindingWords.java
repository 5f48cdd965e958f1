package daubline.base;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What findings say, in a language other than English. Findings are written in English where they are found, and commands
 * print them so; here the English sentence is the key to the other one, from shared/findings_de.csv. {0}, {1} … stand for
 * names, numbers and texts of the person, which come out as they went in. A sentence that is not there stays English.
 */
public final class FindingWords {

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");
  private static final FindingWords NONE = new FindingWords(Map.of(), List.of());

  private final Map<String, String> whole;
  private final List<Sentence> sentences;

  /** A sentence with places: what it looks like, the longest piece of it that is fixed, and what to say instead. */
  private record Sentence(Pattern english, List<Integer> places, String fixed, int letters, String other) {

    static Sentence of(String english, String other) {
      StringBuilder pattern = new StringBuilder();
      List<Integer> places = new ArrayList<>();
      Matcher m = PLACE.matcher(english);
      int end = 0;
      while (m.find()) {
        pattern.append(Pattern.quote(english.substring(end, m.start()))).append("(.+?)");
        places.add(Integer.valueOf(m.group(1)));
        end = m.end();
      }
      pattern.append(Pattern.quote(english.substring(end)));
      String[] pieces = PLACE.split(english);
      String fixed = Arrays.stream(pieces).max(Comparator.comparingInt(String::length)).orElse("");
      return new Sentence(Pattern.compile(pattern.toString(), Pattern.DOTALL), places, fixed, String.join("", pieces).length(), other);
    }
  }

  private FindingWords(Map<String, String> whole, List<Sentence> sentences) {
    this.whole = whole;
    this.sentences = sentences;
  }

  /**
   * The words of a language.
   *
   * @param language a two-letter code; findings stay English in one that they are not written in
   */
  public static FindingWords of(String language) {
    return language.equals(CatalogueWords.GERMAN) ? German.WORDS : NONE;
  }

  /** A finding with its sentences in this language; place and code stay. */
  public Finding in(Finding f) {
    return new Finding(f.severity(), f.code(), f.where(), said(f.what()), said(f.remedy()), f.subject(), f.variable());
  }

  /** A sentence in this language, with what stands in its places; as it is when it is not known. */
  public String said(String english) {
    String known = whole.get(english);
    return known != null ? known : sentences.stream().filter(s -> english.contains(s.fixed())).map(s -> filled(s, english)).flatMap(Optional::stream)
        .findFirst().orElse(english);
  }

  /** Whether a sentence is known. */
  public boolean knows(String english) {
    return whole.containsKey(english) || sentences.stream().anyMatch(s -> s.english().matcher(english).matches());
  }

  private Optional<String> filled(Sentence sentence, String english) {
    Matcher m = sentence.english().matcher(english);
    if (!m.matches()) {
      return Optional.empty();
    }
    Map<Integer, String> parts = new HashMap<>();
    for (int i = 0; i < sentence.places().size(); i++) {
      // what stands in a place may be a sentence of its own
      parts.putIfAbsent(sentence.places().get(i), said(m.group(i + 1)));
    }
    return Optional.of(PLACE.matcher(sentence.other()).replaceAll(p -> Matcher.quoteReplacement(parts.get(Integer.valueOf(p.group(1))))));
  }

  /** Read once, when somebody first asks. */
  private static final class German {
    static final FindingWords WORDS = read();

    private static FindingWords read() {
      Map<String, String> whole = new HashMap<>();
      List<Sentence> sentences = new ArrayList<>();
      for (NamedCsvRecord row : SharedTable.rows("findings_de.csv")) {
        String english = row.getField("english");
        if (PLACE.matcher(english).find()) {
          sentences.add(Sentence.of(english, row.getField("german")));
        } else {
          whole.put(english, row.getField("german"));
        }
      }
      // the sentence with most of its own is meant
      sentences.sort(Comparator.comparingInt(Sentence::letters).reversed());
      return new FindingWords(whole, sentences);
    }
  }
}
