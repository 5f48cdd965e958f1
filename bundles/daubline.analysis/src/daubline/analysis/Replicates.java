package daubline.analysis;

import daubline.base.Amount;
import daubline.base.Repeated;
import daubline.base.Trail;
import daubline.engine.inference.AnalysisData;
import daubline.model.Analysis;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Repeated measurements of one sample, which count as one analysis in a comparison: their mean. */
final class Replicates {

  private Replicates() {
  }

  /** The analyses of a list, those with the same replicate, material, specimen and iron basis as one. */
  static List<AnalysisData> pooled(List<Analysis> analyses, Function<Analysis, AnalysisData> data) {
    Map<Object, List<AnalysisData>> groups = new LinkedHashMap<>();
    for (Analysis analysis : analyses) {
      boolean single = analysis.getReplicate() == null || analysis.getReplicate().isBlank();
      Object key = single ? analysis : List.of(analysis.getReplicate().strip(), String.valueOf(analysis.getMaterial()), String.valueOf(analysis.getSpecimen()),
          String.valueOf(analysis.getIronBasis()));
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(data.apply(analysis));
    }
    return groups.values().stream().map(Replicates::one).toList();
  }

  private static AnalysisData one(List<AnalysisData> all) {
    AnalysisData first = all.get(0);
    if (all.size() == 1) {
      return first;
    }
    Set<String> symbols = new LinkedHashSet<>();
    all.forEach(a -> symbols.addAll(a.components().keySet()));
    Map<String, Amount> components = new LinkedHashMap<>();
    symbols.forEach(s -> mean(all.stream().map(a -> a.components().get(s)).filter(Objects::nonNull).toList()).ifPresent(m -> components.put(s, m)));
    double total = all.stream().mapToDouble(AnalysisData::total).average().orElse(Double.NaN);
    Trail trail = new Trail("Mean of " + all.size() + " replicates", "", first.id(), all.stream().map(AnalysisData::trail).toList());
    return new AnalysisData(first.id(), first.material(), first.specimen(), first.ironBasis(), components, total, trail);
  }

  /** The mean; of numbers beside limits no more is known than the largest of them. Reasons why there is no number say nothing beside numbers. */
  private static Optional<Amount> mean(Collection<Amount> all) {
    List<Amount> numbers = all.stream().filter(Amount::isNumber).toList();
    if (numbers.isEmpty()) {
      return all.stream().findFirst();
    }
    return Repeated.mean(numbers).or(() -> Optional.of(Amount.atMost(numbers.stream().mapToDouble(Amount::value).max().orElseThrow())));
  }
}
