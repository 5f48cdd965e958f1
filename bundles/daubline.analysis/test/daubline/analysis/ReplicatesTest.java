package daubline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import daubline.base.Amount;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.AnalysisData;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.ModelFactory;
import daubline.session.Readings;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Repeated measurements of one sample count as one. Shares invented. */
class ReplicatesTest {

  private static Analysis analysis(String id, String replicate, Material material, Object... parts) {
    Analysis analysis = ModelFactory.eINSTANCE.createAnalysis();
    analysis.setId(id);
    analysis.setReplicate(replicate);
    analysis.setMaterial(material);
    for (int i = 0; i < parts.length; i += 2) {
      Component component = ModelFactory.eINSTANCE.createComponent();
      component.setSymbol((String) parts[i]);
      Readings.put(component, (Amount) parts[i + 1]);
      analysis.getComponents().add(component);
    }
    return analysis;
  }

  private static AnalysisData data(Analysis analysis) {
    Map<String, Amount> parts = new LinkedHashMap<>();
    analysis.getComponents().forEach(c -> parts.put(c.getSymbol(), Readings.amount(c)));
    return new AnalysisData(analysis.getId(), analysis.getMaterial(), "", IronBasis.NOT_STATED, parts, Double.NaN, Trail.of(analysis.getId(), ""));
  }

  @Test
  void thoseOfOneNameAreOneByTheirMean() {
    List<AnalysisData> pooled = Replicates.pooled(List.of(analysis("a", "tap", Material.SLAG, "SiO2", Amount.exact(0.24), "MnO", Amount.belowLimit(1e-4)),
        analysis("b", "tap", Material.SLAG, "SiO2", Amount.exact(0.25), "MnO", Amount.exact(2e-4)), analysis("c", null, Material.SLAG, "SiO2", Amount.exact(0.3)),
        analysis("d", "", Material.SLAG, "SiO2", Amount.exact(0.3)), analysis("e", "tap", Material.ORE, "SiO2", Amount.exact(0.1))), ReplicatesTest::data);
    assertEquals(List.of("a", "c", "d", "e"), pooled.stream().map(AnalysisData::id).toList());
    assertEquals(0.245, pooled.get(0).components().get("SiO2").value(), 1e-12);
    assertEquals(0.005, pooled.get(0).components().get("SiO2").sigma(), 1e-12);
    assertEquals(ValueKind.AT_MOST, pooled.get(0).components().get("MnO").kind(), "no mean of a number and a limit");
    assertEquals(2, pooled.get(0).trail().from().size());
  }
}
