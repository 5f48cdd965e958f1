package daubline.export.tables;

import daubline.analysis.Origins;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** What each trial was charged with, from its log. */
public final class ChargingTable extends Spec {

  /** The table. */
  public ChargingTable() {
    super("charging", "Charging", "Charges of each trial summed from its run log.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("charges", "Charges", ""), Column.number("ore_charges", "Charges with ore", ""),
        Column.number("ore", "Ore", "kg"), Column.number("charcoal", "Charcoal", "kg"), Column.number("flux", "Flux", "kg"),
        Column.number("ratio", "Ore to charcoal", ""), Column.number("first_ore", "First ore after", "min"),
        Column.number("last_ore", "Last ore after", "min"), Column.number("interval", "Mean interval of ore", "min"),
        Column.number("unweighed", "Charges with an unweighed material", ""));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (TrialData trial : results.snapshot().trials()) {
      results.snapshot().record().trial(trial.id()).map(Charges::of).filter(c -> !c.entries().isEmpty())
          .ifPresent(c -> rows.add(row(trial, c).stream().map(cell -> from(trial, cell, c)).toList()));
    }
    return rows;
  }

  private static List<Cell> row(TrialData trial, Charges charges) {
    double first = charges.minutes(Material.ORE, false);
    double last = charges.minutes(Material.ORE, true);
    long ore = charges.count(Material.ORE);
    double fuel = charges.mass(Material.CHARCOAL);
    return List.of(Cell.text(trial.name()), Cell.fixed(charges.entries().size(), 0), Cell.fixed(ore, 0), mass(charges, Material.ORE),
        mass(charges, Material.CHARCOAL), mass(charges, Material.FLUX), fuel > 0 ? Cell.fixed(charges.mass(Material.ORE) / fuel, 2) : Cell.EMPTY,
        Cell.fixed(first, 0), Cell.fixed(last, 0), ore > 1 ? Cell.fixed((last - first) / (ore - 1), 1) : Cell.EMPTY, Cell.fixed(charges.unweighed(), 0));
  }

  /** Each number of the row is worked out of the charges of the log. */
  private static Cell from(TrialData trial, Cell cell, Charges charges) {
    return cell.isPlainNumber() ? cell.from(Trail.reckoned("Charges of " + trial.name(), cell.text(), "summed or counted over the charges of the run log", charges.entries().stream().map(Origins::entry).toList()))
        : cell;
  }

  private static Cell mass(Charges charges, Material material) {
    if (charges.count(material) == 0) {
      return Cell.fixed(0, 0);
    }
    double mass = charges.mass(material);
    return mass > 0 ? Cell.plusMinus(mass, charges.sigma(material)) : Cell.missing(ValueKind.NOT_WEIGHED);
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Standard uncertainties of charges are added, not averaged out: one scale or measure served them all.",
        "Charcoal includes first fill and preheat where the log has them. Times count from first light.");
  }
}
