package daubline.engine.design.advise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every kind listed can be built, stays inside the limits, and says what it is good for. */
class CatalogueKindsTest {

  @TestFactory
  List<DynamicTest> everyKindIsBuilt() {
    List<Factor> factors = IntStream.range(0, 4).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", 2, 4)).toList();
    return Catalogue.all().stream().map(kind -> DynamicTest.dynamicTest(kind.name(), () -> {
      Design design = kind.maker().make(factors, 30, 1, Progress.NONE);
      assertFalse(kind.when().isEmpty() || design.name().isEmpty());
      assertTrue(design.size() <= 30);
      assertTrue(design.settings().stream().allMatch(s -> IntStream.range(0, 4).allMatch(j -> Math.abs(s[j]) <= 1 + 1e-12)));
      for (int j = 0; j < 4; j++) {
        int factor = j;
        assertTrue(design.settings().stream().mapToDouble(s -> s[factor]).distinct().count() > 1, "f" + j + " never changes");
      }
    })).toList();
  }

  @Test
  void namesAreDifferent() {
    assertEquals(Catalogue.all().size(), Catalogue.all().stream().map(Catalogue.Kind::name).distinct().count());
  }
}
