package daubline.cli;

import daubline.analysis.design.Proposal;
import daubline.analysis.design.Season;
import daubline.base.Finding;
import daubline.base.Version;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.advise.DesignAdvisor;
import daubline.engine.design.judge.DesignReview;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Designs as plain values for {@link Json}. */
final class DesignJson {

  private DesignJson() {
  }

  static Map<String, Object> season(Season season) {
    return Json.map("version", Version.NUMBER, "trials", season.capacity().trials(), "furnaces", season.capacity().furnaces(), "assured", season.capacity().assured(),
        "expected", season.capacity().expected(), "binding", season.capacity().binding().stream().map(l -> l.name()).toList(), "next",
        season.capacity().next().map(l -> l.name()), "limits", season.capacity().limits().stream().map(l -> Json.map("name", l.name(), "trials", l.trials(), "why",
            l.text())).toList(), "findings", findings(season.findings()));
  }

  static Map<String, Object> proposal(Proposal p) {
    return Json.map("version", Version.NUMBER, "series", p.brief().series().name(), "question", p.brief().question().word(), "rules",
        p.brief().rules().stream().map(r -> r.text(p.brief().factors())).toList(), "recommended", option(p.advice().recommended()), "rejected",
        p.advice().rejected().stream().map(DesignJson::option).toList(), "taken", p.chosen().name(), "reasons", p.advice().reasons(), "burntBefore", p.done().size(), "seed", p.plan().seed(), "algorithm", p.plan().algorithm(), "algorithmVersion", p.plan().version(),
        "restriction", p.plan().restriction(), "trials", trials(p.plan().design()), "review", review(p.review()), "season", season(p.season()));
  }

  private static Map<String, Object> option(DesignAdvisor.Option option) {
    return Json.map("name", option.name(), "score", option.score(), "verdict", option.verdict());
  }

  private static List<Map<String, Object>> trials(Design design) {
    return IntStream.range(0, design.size()).mapToObj(i -> {
      Map<String, Object> settings = new LinkedHashMap<>();
      for (int j = 0; j < design.factors().size(); j++) {
        Factor f = design.factors().get(j);
        double code = design.settings().get(i)[j];
        settings.put(f.id(), f.isCategory() ? f.show(code) : (Object) f.decode(code));
      }
      return Json.map("place", i + 1, "furnace", design.runs().get(i).furnace() + 1, "settings", settings);
    }).toList();
  }

  static Map<String, Object> review(DesignReview review) {
    return Json.map("effects", review.effects().stream().map(e -> Json.map("name", e.name(), "estimable", e.estimable(), "stratum", e.stratum(), "freedom", e.freedom(),
            "standardError", e.standardError(), "smallest", e.smallest(), "powerAtOne", e.powerAtOne(), "powerAtTwo", e.powerAtTwo())).toList(),
        "aliases", review.aliases().stream().map(a -> Json.map("estimate", a.column(), "takesUp", a.interaction(), "share", a.share())).toList(),
        "correlations", Json.map("names", review.correlations().names(), "values", review.correlations().values()),
        "prediction", Json.map("average", review.prediction().average(), "median", review.prediction().median(), "ninety", review.prediction().ninety(), "worst",
            review.prediction().worst()), "leverage", review.leverage(),
        "lost", review.lost().stream().map(l -> Json.map("trial", l.trial() + 1, "information", l.information(), "widening", l.widening(), "worst", l.worst(), "lost",
            l.lost())).toList(), "findings", findings(review.findings()));
  }

  static List<String> findings(List<Finding> findings) {
    return findings.stream().map(Finding::toString).toList();
  }
}
