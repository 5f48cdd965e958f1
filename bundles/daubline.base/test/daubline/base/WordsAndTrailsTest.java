package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsAndTrailsTest {

  @Test
  void probabilitiesSumToOneInTheOrderGiven() {
    Map<String, Double> shares = Probabilities.parse("round: 3; oval:1; round:4", DecimalSign.POINT).orElseThrow();
    assertEquals(List.of("round", "oval"), List.copyOf(shares.keySet()));
    assertEquals(0.875, shares.get("round"), 1e-15);
    assertEquals(0.125, shares.get("oval"), 1e-15);
    assertEquals(0.7, Probabilities.parse("round:0,7; oval:0,3", DecimalSign.COMMA).orElseThrow().get("round"), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(strings = {"round", "round:-1; oval:2", "round:0; oval:0", "round:x", "round:0,7; oval:0,3", ""})
  void otherTextsAreNoProbabilities(String text) {
    assertEquals(Optional.empty(), Probabilities.parse(text, DecimalSign.POINT));
  }

  @Test
  void aSingleWordHasProbabilityOne() {
    assertEquals(Map.of("oval", 1.0), Probabilities.of(Amount.category("oval")));
    assertEquals(0.25, Probabilities.of(Amount.category("oval:1; round:3")).get("oval"), 1e-15);
  }

  @Test
  void aCategoryTakesItsWordsOnly() {
    AmountReader reader = new AmountReader(DecimalSign.POINT);
    List<String> words = List.of("none", "round", "oval");
    assertEquals(ValueKind.CATEGORY, reader.category("None", words).amount().kind());
    assertEquals("round:0.7; oval:0.3", reader.category("round:0.7; oval:0.3", words).amount().category());
    assertFalse(reader.category("round:0.7; square:0.3", words).isRead());
    assertTrue(reader.category("square", words).finding().remedy().contains("none, round, oval"));
  }

  @Test
  void aTrailReadsFromTheResultDownToTheEntries() {
    Trail trail = Trail.of("ore to charcoal", "0.49", Trail.entry("ore charged", "30.5 kg", "charge-1"),
        Trail.of("charcoal burnt", "62 kg", Trail.entry("first fill", "", "charge-0")));
    assertEquals("ore to charcoal: 0.49\n  ore charged: 30.5 kg\n  charcoal burnt: 62 kg\n    first fill\n", trail.asText());
    assertThrows(UnsupportedOperationException.class, () -> trail.from().add(trail));
  }

  @Test
  void amountsRefuseWhatCannotBe() {
    assertThrows(IllegalArgumentException.class, () -> Amount.plusMinus(1, -1));
    assertThrows(IllegalArgumentException.class, () -> Amount.range(2, 1));
    assertThrows(IllegalArgumentException.class, () -> Amount.of(ValueKind.EXACT));
  }

  @Test
  void anExponentInAShortUncertaintyIsRefusedRatherThanMisread() {
    Unit m = Units.find(Quantity.LENGTH, "m").orElseThrow();
    assertFalse(new AmountReader(DecimalSign.POINT).number("1.5e3(2)", m).isRead());
    assertEquals(0.02, new AmountReader(DecimalSign.COMMA).number("1,50(2)", m).amount().sigma(), 1e-15);
  }

  @Test
  void everyResidueClassIsDefinedAndSourced() {
    List<ResidueKinds.Kind> kinds = ResidueKinds.standard();
    assertTrue(kinds.size() >= 12);
    assertEquals(kinds.size(), new HashSet<>(kinds.stream().map(ResidueKinds.Kind::id).toList()).size());
    kinds.forEach(k -> assertTrue(k.definition().length() > 20 && !k.source().isBlank() && !k.name().isBlank(), k.id()));
  }
}
