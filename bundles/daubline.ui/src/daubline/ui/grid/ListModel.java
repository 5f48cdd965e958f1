package daubline.ui.grid;

import daubline.base.Trail;
import daubline.ui.Words;
import java.util.List;
import java.util.Optional;

/**
 * A grid that is only read and shows one thing a row; what is left to say is how a thing fills its cells.
 *
 * @param <T> what a row shows
 */
public abstract class ListModel<T> implements GridModel {

  private final String[] headings;
  private final double[] shares;
  private List<T> items = List.of();

  /**
   * A model without rows.
   *
   * @param headings keys of the headings
   * @param shares the share of the width that each column gets
   */
  protected ListModel(String[] headings, double[] shares) {
    this.headings = headings;
    this.shares = shares;
  }

  /** Shows other things. */
  public final void show(List<T> now) {
    items = List.copyOf(now);
  }

  /** The thing in a row. */
  public final T item(int row) {
    return items.get(row);
  }

  /** How the thing of a row fills a cell. */
  protected abstract GridCell cell(int column, int row, T item);

  /** Where what the thing of a row shows in a column comes from. */
  protected Optional<Trail> origin(int column, int row, T item) {
    return Optional.empty();
  }

  @Override
  public final Optional<Trail> origin(int column, int row) {
    return origin(column, row, items.get(row));
  }

  @Override
  public final int columns() {
    return headings.length;
  }

  @Override
  public final int rows() {
    return items.size();
  }

  @Override
  public final String heading(int column) {
    return Words.of(headings[column]);
  }

  @Override
  public final String key(int column) {
    return headings[column];
  }

  @Override
  public final double share(int column) {
    return shares[column];
  }

  @Override
  public final GridCell cell(int column, int row) {
    return cell(column, row, items.get(row));
  }
}
