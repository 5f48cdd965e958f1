package daubline.ui.sheet;

import daubline.model.Identified;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Has the rows of a grid that is only read lead to the things that they are about: by a double click, by Enter and by the context menu. */
public final class Opening {

  private final Function<Point, List<Goal>> goals;
  private final Grid grid;

  /**
   * A thing of the current study.
   *
   * @param id its id
   * @param variable the property that is looked for there, or empty
   */
  public record Goal(String id, String variable) {
  }

  private Opening(Grid grid, Function<Point, List<Goal>> goals) {
    this.grid = grid;
    this.goals = goals;
  }

  /** What each cell leads to, the first by a double click. */
  public static void on(Grid grid, Function<Point, List<Goal>> goals) {
    Opening opening = new Opening(grid, goals);
    grid.offer(opening::offer);
    grid.control().addListener(SWT.MouseDoubleClick, e -> {
      if (grid.isCell(e.x, e.y)) {
        opening.first();
      }
    });
    grid.onEnter(opening::first);
  }

  private List<Goal> goals() {
    return grid.selected().map(goals).orElse(List.of()).stream().filter(g -> find(g).isPresent()).toList();
  }

  private static Optional<Identified> find(Goal goal) {
    return Studies.get().current().filter(s -> s.blind().isEmpty()).flatMap(s -> s.session().find(goal.id(), Identified.class));
  }

  private void first() {
    goals().stream().findFirst().ifPresent(Opening::open);
  }

  private static void open(Goal goal) {
    find(goal).ifPresent(o -> Jump.to(o, goal.variable()));
  }

  private void offer(Menu menu) {
    for (Goal goal : goals()) {
      MenuItem item = new MenuItem(menu, SWT.PUSH);
      item.setText(Words.of("menu.open", OpenStudy.nameOf(find(goal).orElseThrow())).replace("&", "&&"));
      item.addListener(SWT.Selection, e -> open(goal));
    }
  }
}
