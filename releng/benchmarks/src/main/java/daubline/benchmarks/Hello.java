package daubline.benchmarks;

/** The least that a program on this class path can do; the peer of {@code daubline --version}. */
public final class Hello {

  private Hello() {
  }

  /** Prints one line. */
  public static void main(String[] args) {
    System.out.println("hello");
  }
}
