package daubline.analysis;

import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** Puts together what trials are compared with. */
final class Targets {

  private Targets() {
  }

  /** The remains of trials as targets. */
  static List<Target> ofTrials(List<SheetData> trials) {
    return trials.stream().map(t -> new Target("as found", t, List.of())).toList();
  }

  /** Sheets by themselves, or grouped: the features of each group, then the group where it has two or more. */
  static List<Target> of(Against against, List<EvidenceData> sheets) {
    if (against == Against.SHEET) {
      return sheets.stream().map(Targets::single).toList();
    }
    Map<String, List<EvidenceData>> groups = new LinkedHashMap<>();
    sheets.forEach(s -> groups.computeIfAbsent(name(against, s), n -> new ArrayList<>()).add(s));
    List<Target> targets = new ArrayList<>();
    groups.forEach((name, features) -> {
      features.forEach(f -> targets.add(single(f)));
      if (features.size() > 1 && !name.isEmpty()) {
        targets.add(group(against, name, features));
      }
    });
    return targets;
  }

  private static Target single(EvidenceData evidence) {
    return new Target(evidence.site(), evidence.sheet(), List.of());
  }

  private static Target group(Against against, String name, List<EvidenceData> features) {
    String kind = against.name().toLowerCase(Locale.ROOT);
    SheetData together = SheetGroup.of(kind + ":" + name, name + ", " + features.size() + " features together",
        features.stream().map(EvidenceData::sheet).toList());
    return new Target(kind, together, features.stream().map(f -> f.sheet().id()).toList());
  }

  /** The name of the group that a sheet belongs to; empty when the study does not say. */
  private static String name(Against against, EvidenceData evidence) {
    Function<EvidenceData, String> name = switch (against) {
      case PHASE -> e -> e.phase().isBlank() ? "" : e.site() + ", " + e.phase().strip();
      case PERIOD -> EvidenceData::period;
      case REGION -> EvidenceData::region;
      default -> EvidenceData::site;
    };
    return name.apply(evidence).strip();
  }
}
