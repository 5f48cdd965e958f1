package daubline.engine.inference;

import daubline.engine.inference.kernel.Kernel;
import java.util.Objects;
import java.util.function.Supplier;

/** The answer of a criterion: a kernel that can be drawn from, or why nothing could be tested. */
public sealed interface Assessment {

  /** What was read, in words; made only when somebody wants to see it. */
  Explanation explain();

  /** Both sides could be compared. */
  static Assessment tested(Kernel kernel, Supplier<Explanation> explanation) {
    return new Tested(Objects.requireNonNull(kernel), explanation);
  }

  /** Something was missing that could have been there; it lowers the coverage. */
  static Assessment notTested(Supplier<Explanation> explanation) {
    return new NotTested(true, explanation);
  }

  /** Nobody could have recovered it; it does not lower the coverage. */
  static Assessment notRecoverable(Supplier<Explanation> explanation) {
    return new NotTested(false, explanation);
  }

  /**
   * Both sides could be compared.
   *
   * @param kernel the agreement, its uncertainty and its compatibility
   * @param explanation the words
   */
  record Tested(Kernel kernel, Supplier<Explanation> explanation) implements Assessment {
    @Override
    public Explanation explain() {
      return explanation.get();
    }
  }

  /**
   * Nothing could be compared.
   *
   * @param recoverable false when nobody could have recovered the evidence
   * @param explanation the words
   */
  record NotTested(boolean recoverable, Supplier<Explanation> explanation) implements Assessment {
    @Override
    public Explanation explain() {
      return explanation.get();
    }
  }
}
