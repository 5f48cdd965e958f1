package daubline.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A linear model: the columns into which a coded setting is spread. Categories are coded so that the columns of a
 * factor sum to zero over its categories: −1 and +1 for two, otherwise (1,0,…), (0,1,…), …, (−1,−1,…).
 */
public final class Model {

  private record Part(int factor, int code) {
  }

  private final List<Factor> factors;
  private final List<Term> terms;
  private final int[] categories;
  private final List<Part[]> columns = new ArrayList<>();
  private final List<Integer> termOf = new ArrayList<>();
  private final List<String> names = new ArrayList<>();

  /**
   * A model of the mean and these terms.
   *
   * @throws IllegalArgumentException when a term squares a factor of categories or names a factor that is not there
   */
  public Model(List<Factor> factors, List<Term> terms) {
    this.factors = List.copyOf(factors);
    Set<Term> all = new LinkedHashSet<>();
    all.add(Term.MEAN);
    all.addAll(terms);
    this.terms = List.copyOf(all);
    categories = factors.stream().mapToInt(f -> f.names().size()).toArray();
    for (int t = 0; t < this.terms.size(); t++) {
      addColumns(t, this.terms.get(t));
    }
  }

  /** Main effects only. */
  public static Model main(List<Factor> factors) {
    List<Term> terms = new ArrayList<>();
    for (int i = 0; i < factors.size(); i++) {
      terms.add(Term.of(i));
    }
    return new Model(factors, terms);
  }

  /** Main effects and every interaction of two factors. */
  public static Model interactions(List<Factor> factors) {
    List<Term> terms = new ArrayList<>(main(factors).terms);
    for (int i = 0; i < factors.size(); i++) {
      for (int j = i + 1; j < factors.size(); j++) {
        terms.add(Term.of(i, j));
      }
    }
    return new Model(factors, terms);
  }

  /** Main effects, interactions of two, and squares of the measured factors that have more than two levels. */
  public static Model quadratic(List<Factor> factors) {
    List<Term> terms = new ArrayList<>(interactions(factors).terms);
    for (int i = 0; i < factors.size(); i++) {
      if (!factors.get(i).isCategory() && factors.get(i).levels().size() != 2) {
        terms.add(Term.of(i, i));
      }
    }
    return new Model(factors, terms);
  }

  private void addColumns(int index, Term term) {
    List<List<Part>> products = new ArrayList<>();
    products.add(List.of());
    for (int f : term.factors().stream().distinct().toList()) {
      if (f < 0 || f >= factors.size()) {
        throw new IllegalArgumentException("a term names factor " + (f + 1) + " of " + factors.size());
      }
      int power = (int) term.factors().stream().filter(x -> x == f).count();
      if (factors.get(f).isCategory() && power > 1) {
        throw new IllegalArgumentException("the categories of " + factors.get(f).name() + " cannot be squared");
      }
      products = times(products, f, power);
    }
    for (List<Part> product : products) {
      columns.add(product.toArray(Part[]::new));
      termOf.add(index);
      names.add(columnName(term, product));
    }
  }

  private List<List<Part>> times(List<List<Part>> products, int f, int power) {
    List<List<Part>> result = new ArrayList<>();
    for (List<Part> product : products) {
      for (int k = 0; k < factors.get(f).columns(); k++) {
        List<Part> longer = new ArrayList<>(product);
        longer.add(new Part(f, factors.get(f).isCategory() ? k : power));
        result.add(longer);
      }
    }
    return result;
  }

  private String columnName(Term term, List<Part> product) {
    StringBuilder name = new StringBuilder(term.name(factors));
    for (Part p : product) {
      if (categories[p.factor] > 2) {
        name.append(" [").append(factors.get(p.factor).names().get(p.code)).append(']');
      }
    }
    return name.toString();
  }

  /** The factors, in the order of a setting. */
  public List<Factor> factors() {
    return factors;
  }

  /** The terms, the mean first. */
  public List<Term> terms() {
    return terms;
  }

  /** How many columns. */
  public int size() {
    return columns.size();
  }

  /** The index into {@link #terms} of the term of a column. */
  public int termOf(int column) {
    return termOf.get(column);
  }

  /** The name of a column. */
  public String name(int column) {
    return names.get(column);
  }

  /** The columns of a term. */
  public int[] columnsOf(Term term) {
    int index = terms.indexOf(term);
    return java.util.stream.IntStream.range(0, size()).filter(c -> termOf.get(c) == index).toArray();
  }

  /** The columns that change with a factor. */
  public int[] columnsWith(int factor) {
    return java.util.stream.IntStream.range(0, size())
        .filter(c -> terms.get(termOf.get(c)).factors().contains(factor)).toArray();
  }

  /** The value of one column at a coded setting. */
  public double value(int column, double[] setting) {
    double product = 1;
    for (Part p : columns.get(column)) {
      product *= part(p, setting[p.factor]);
    }
    return product;
  }

  private double part(Part p, double x) {
    int q = categories[p.factor];
    if (q == 0) {
      return p.code == 1 ? x : p.code == 2 ? x * x : Math.pow(x, p.code);
    }
    int index = (int) Math.round(x);
    if (q == 2) {
      return index == 0 ? -1 : 1;
    }
    return index == p.code ? 1 : index == q - 1 ? -1 : 0;
  }

  /** All columns at a coded setting. */
  public double[] row(double[] setting) {
    double[] row = new double[size()];
    for (int c = 0; c < row.length; c++) {
      row[c] = value(c, setting);
    }
    return row;
  }

  /** The columns at several settings, by rows. */
  public double[][] matrix(List<double[]> settings) {
    return settings.stream().map(this::row).toArray(double[][]::new);
  }

  /** The average of x xᵀ over settings: the moment matrix of a region. */
  public double[][] moments(List<double[]> settings) {
    double[][] sum = new double[size()][size()];
    for (double[] setting : settings) {
      double[] x = row(setting);
      for (int i = 0; i < x.length; i++) {
        for (int j = 0; j < x.length; j++) {
          sum[i][j] += x[i] * x[j] / settings.size();
        }
      }
    }
    return sum;
  }
}
