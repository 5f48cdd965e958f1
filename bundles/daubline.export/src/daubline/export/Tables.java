package daubline.export;

import daubline.export.tables.BalanceTable;
import daubline.export.tables.BasesTable;
import daubline.export.tables.ChargingTable;
import daubline.export.tables.ChecksTable;
import daubline.export.tables.ChemistryTable;
import daubline.export.tables.CitationsTable;
import daubline.export.tables.ComparisonTable;
import daubline.export.tables.DecayTable;
import daubline.export.tables.DesignTable;
import daubline.export.tables.DifferencesTable;
import daubline.export.tables.EvidenceTable;
import daubline.export.tables.ExclusionsTable;
import daubline.export.tables.IncidentsTable;
import daubline.export.tables.InfluenceTable;
import daubline.export.tables.LotsTable;
import daubline.export.tables.MethodsTable;
import daubline.export.tables.MineralogyTable;
import daubline.export.tables.PeopleTable;
import daubline.export.tables.PredictionsTable;
import daubline.export.tables.ProductsTable;
import daubline.export.tables.RankingTable;

import daubline.export.tables.RanksTable;
import daubline.export.tables.ReconstructionsTable;
import daubline.export.tables.RepeatsTable;
import daubline.export.tables.ResiduesTable;
import daubline.export.tables.SamplesTable;
import daubline.export.tables.StagesTable;
import daubline.export.tables.TimelineTable;
import daubline.export.tables.TrialsTable;
import daubline.export.tables.VisitsTable;
import daubline.export.tables.YieldsTable;
import java.util.List;
import java.util.Optional;

/** All tables of the publication, in the order in which they are printed. */
public final class Tables {

  private static final List<TableSpec> ALL = List.of(new EvidenceTable(), new ReconstructionsTable(), new BasesTable(), new DifferencesTable(), new TrialsTable(), StagesTable.dimensions(),
      StagesTable.conditions(), new LotsTable(), new DesignTable(), new ChargingTable(), new TimelineTable(), new ProductsTable(), new YieldsTable(),
      new BalanceTable(), new ResiduesTable(), new ChemistryTable(), new MethodsTable(), new MineralogyTable(), new PredictionsTable(), new IncidentsTable(),
      new SamplesTable(), new VisitsTable(), new DecayTable(), new RankingTable(), new RanksTable(), new InfluenceTable(), new ExclusionsTable(),
      new RepeatsTable(), new ComparisonTable(), new PeopleTable(), new CitationsTable(), new ChecksTable());

  private Tables() {
  }

  /** Every table. */
  public static List<TableSpec> all() {
    return ALL;
  }

  /** A table by its short name. */
  public static Optional<TableSpec> find(String id) {
    return ALL.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
