package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.base.Wording;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every criterion is told in German: name, meaning, settings with their sources, and the reason when nothing can be compared. */
class CriteriaWordsTest {

  private static final Wording GERMAN = Wording.of("de");
  private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?");

  static Stream<Criterion> all() {
    return Criteria.all().stream();
  }

  @Test
  void everyCriterionHasItsRowAndNoOtherHas() throws IOException {
    Map<String, List<String>> rows;
    try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
        .ofNamedCsvRecord(new InputStreamReader(Wording.class.getResourceAsStream("/daubline/shared/criteria_de.csv"), StandardCharsets.UTF_8))) {
      rows = csv.stream().collect(Collectors.toMap(r -> r.getField("id"), r -> List.of(r.getField("english_name"), r.getField("english_meaning"))));
    }
    assertEquals(all().collect(Collectors.toMap(Criterion::id, c -> List.of(c.name(), c.meaning()))), rows, "shared/criteria_de.csv");
  }

  @ParameterizedTest
  @MethodSource("all")
  void isToldInGerman(Criterion c) {
    List<String> untold = new ArrayList<>();
    for (Setting s : c.settings()) {
      Stream.of(s.name(), s.meaning(), s.source().toString()).filter(t -> GERMAN.apply(t).equals(t)).forEach(untold::add);
    }
    assertAll(c.id(), () -> assertNotEquals(c.meaning(), GERMAN.apply(c.meaning())), () -> assertTrue(GERMAN.apply(c.name()).length() > 2),
        () -> assertEquals(figures(c.meaning()), figures(GERMAN.apply(c.meaning())), "figures"),
        () -> assertEquals(List.of(), untold, "add them to shared/results_de.csv"));
  }

  private static TreeSet<String> figures(String text) {
    return FIGURE.matcher(text).results().map(MatchResult::group).map(f -> f.replace(',', '.')).collect(Collectors.toCollection(TreeSet::new));
  }

  /** Empty sheets, and sheets on which nothing is preserved: the reasons hold no English word that the German ones lack. */
  @ParameterizedTest
  @MethodSource("all")
  void saysWhyNothingCanBeComparedInGerman(Criterion c) {
    SheetData empty = SheetBuilder.sheet("s").build();
    SheetBuilder gone = SheetBuilder.sheet("g");
    c.inputs().forEach(v -> gone.says(v, Amount.of(ValueKind.NOT_PRESERVED)));
    for (SheetData evidence : List.of(empty, gone.build())) {
      String reason = c.assess(evidence, empty, SettingValues.standard(c)).explain().reason();
      String told = GERMAN.apply(reason);
      assertTrue(!told.equals(reason) && !told.matches(".*\\b(the|says|gives|has|needs|nothing|sheet)\\b.*"), told);
    }
  }
}
