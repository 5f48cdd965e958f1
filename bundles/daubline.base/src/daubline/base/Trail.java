package daubline.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Where a number came from: what it is, its value as text, and the numbers or entries it was made of.
 *
 * @param what what this step is, in words
 * @param value its value with unit as text; empty when the step has none
 * @param subject the id of the model object behind it, or empty
 * @param from what it was made of; empty at an entry or a citation
 */
public record Trail(String what, String value, String subject, List<Trail> from) {

  private static final Set<String> VERBATIM = Set.of("as typed", "in the words of the source", "citation", "recorded by");

  public Trail {
    Objects.requireNonNull(what);
    Objects.requireNonNull(value);
    Objects.requireNonNull(subject);
    from = List.copyOf(from);
  }

  /** A step made of other steps. */
  public static Trail of(String what, String value, Trail... from) {
    return new Trail(what, value, "", List.of(from));
  }

  /** An entry of the study, at which a screen can open. */
  public static Trail entry(String what, String value, String subject, Trail... from) {
    return new Trail(what, value, subject, List.of(from));
  }

  /** The same in another language; what was typed and what is quoted stays. */
  public Trail in(UnaryOperator<String> wording) {
    return new Trail(wording.apply(what), VERBATIM.contains(what) ? value : wording.apply(value), subject, from.stream().map(t -> t.in(wording)).toList());
  }

  /**
   * A number that was worked out.
   *
   * @param how the formula or method, in words
   * @param from what it was worked out of
   */
  public static Trail reckoned(String what, String value, String how, List<Trail> from) {
    List<Trail> steps = new ArrayList<>();
    if (!how.isEmpty()) {
      steps.add(of("worked out as", how));
    }
    steps.addAll(from);
    steps.add(of("worked out by", "Daubline " + Version.NUMBER));
    return new Trail(what, value, "", steps);
  }

  /** Whether it leads anywhere: to an entry, or to what it was made of. */
  public boolean leadsOn() {
    return !subject.isEmpty() || !from.isEmpty();
  }

  /** The trail as indented lines, the result first. */
  public String asText() {
    return asText(Integer.MAX_VALUE);
  }

  /** The same no deeper than so many steps; what lies deeper is said to be there. */
  public String asText(int deepest) {
    StringBuilder text = new StringBuilder();
    write(text, 0, deepest);
    return text.toString();
  }

  private void write(StringBuilder text, int depth, int deepest) {
    text.append("  ".repeat(depth)).append(what);
    if (!value.isEmpty()) {
      text.append(": ").append(value);
    }
    text.append('\n');
    if (depth < deepest) {
      from.forEach(t -> t.write(text, depth + 1, deepest));
    } else if (!from.isEmpty()) {
      text.append("  ".repeat(depth + 1)).append("… ").append(from.size()).append(" more below").append(subject.isEmpty() ? "" : ", see where " + subject).append('\n');
    }
  }
}
