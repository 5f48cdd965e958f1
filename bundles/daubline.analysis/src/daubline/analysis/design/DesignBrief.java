package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.record.PlanningData;
import daubline.analysis.record.SeriesData;
import daubline.base.Finding;
import daubline.engine.design.Factor;
import daubline.engine.design.Rule;
import daubline.engine.design.Space;
import daubline.engine.design.advise.Question;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a series asks: its factors, what must not be burnt, and what it is for.
 *
 * @param series the series
 * @param factors the factors that could be read
 * @param rules the rules that could be read
 * @param question what it is burnt for
 * @param findings what could not be read, and rules that forbid everything
 */
public record DesignBrief(SeriesData series, List<Factor> factors, List<Rule> rules, Question question, List<Finding> findings) {

  public DesignBrief {
    factors = List.copyOf(factors);
    rules = List.copyOf(rules);
    findings = List.copyOf(findings);
  }

  /** The brief of a series. */
  public static DesignBrief of(StudySnapshot study, SeriesData series) {
    FactorReader reader = new FactorReader(study.variables(), study.record().reconstructions());
    List<Factor> factors = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (SeriesData.FactorData data : series.factors()) {
      reader.read(data).ifPresent(f -> add(factors, f, findings));
    }
    findings.addAll(reader.findings());
    RuleReader rules = new RuleReader(factors, study.variables());
    List<Rule> read = series.planning().forbidden().stream().flatMap(f -> rules.read(f).stream()).toList();
    findings.addAll(rules.findings());
    if (factors.isEmpty() && findings.isEmpty()) {
      findings.add(Finding.error("design.no-factors", series.name(), "the series has no factors: nothing is varied on purpose",
          "add what you will vary, such as Air flow 500 to 800"));
    }
    if (!factors.isEmpty()) {
      findings.addAll(new Space(factors, read).findings());
    }
    return new DesignBrief(series, factors, read, question(series.planning()), findings);
  }

  private static void add(List<Factor> factors, Factor factor, List<Finding> findings) {
    if (factors.stream().anyMatch(f -> f.id().equals(factor.id()))) {
      findings.add(Finding.error("design.factor-twice", "factor " + factor.name(), "it stands among the factors twice", "delete one of them"));
    } else {
      factors.add(factor);
    }
  }

  /** The question that a series keeps; how much each factor moves the outcome when it keeps none. */
  public static Question question(PlanningData planning) {
    return question(planning.aim()).orElse(Question.HOW_MUCH);
  }

  /** A question by its short name, such as "which-matter"; empty for any other text. */
  public static Optional<Question> question(String name) {
    String wanted = name.strip().toUpperCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    return Arrays.stream(Question.values()).filter(q -> q.name().equals(wanted)).findFirst();
  }

  /** Whether a design can be asked for. */
  public boolean isReady() {
    return !factors.isEmpty() && findings.stream().noneMatch(Finding::isError);
  }

  /** The settings allowed. @throws IllegalArgumentException when there is no factor */
  public Space space() {
    return new Space(factors, rules);
  }

  /** The same with one more rule. */
  public DesignBrief with(Rule rule) {
    List<Rule> more = new ArrayList<>(rules);
    more.add(rule);
    return new DesignBrief(series, factors, more, question, findings);
  }

  /** The same with one more finding. */
  DesignBrief with(Finding finding) {
    List<Finding> more = new ArrayList<>(findings);
    more.add(finding);
    return new DesignBrief(series, factors, rules, question, more);
  }

  /** The series of a study by id or name. @throws IllegalArgumentException naming the series there are */
  public static SeriesData find(StudySnapshot study, String wanted) {
    List<SeriesData> all = study.record().series();
    return all.stream().filter(s -> s.id().equals(wanted) || s.name().equals(wanted)).findFirst()
        .or(() -> wanted.isEmpty() && all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty())
        .orElseThrow(() -> new IllegalArgumentException((wanted.isEmpty() ? "which series?" : "the study has no series “" + wanted + "”")
            + (all.isEmpty() ? "; it has none yet: make one first" : "; it has: " + String.join(", ", all.stream().map(SeriesData::name).toList()))));
  }
}
