package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.base.HowGot;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.Lot;
import daubline.model.Reading;
import daubline.model.Study;
import daubline.model.Treatment;
import daubline.seeds.SeedTable.Row;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The store of Aldervale: lots, how they were treated, and what they consist of. */
final class AldervaleStore {

  private static final List<String> COMPONENTS =
      List.of("SiO2", "TiO2", "Al2O3", "Fe2O3", "MnO", "MgO", "CaO", "Na2O", "K2O", "P2O5", "LOI");

  private final SeedTable tables;
  private final Study study;
  private final Map<String, Map<String, Double>> shares = new HashMap<>();

  AldervaleStore(SeedTable tables, Study study) {
    this.tables = tables;
    this.study = study;
  }

  /** Adds everything to the study. */
  void fill() {
    tables.rows("lots").forEach(this::lot);
    tables.rows("treatments").forEach(this::treatment);
    tables.rows("lot-values").forEach(this::value);
    tables.rows("lot-components").forEach(this::analysis);
  }

  /** Mass shares of the components by lot; what was not found counts as nothing. */
  Map<String, Map<String, Double>> shares() {
    return shares;
  }

  private void lot(Row row) {
    Lot lot = NEW.createLot();
    lot.setId(row.get("id"));
    lot.setName(row.get("name"));
    lot.setMaterial(row.word("material", Material.class));
    lot.setSupplier(row.orNull("supplier"));
    lot.setOrigin(row.orNull("origin"));
    lot.setDeliveredOn(row.orNull("delivered_on"));
    lot.setNote(row.orNull("note"));
    lot.setMoistureBasis(row.orNull("moisture_basis"));
    Arrays.stream(row.get("from").split(" ")).filter(id -> !id.isEmpty())
        .forEach(id -> lot.getFrom().add(Make.find(study.getLots(), id)));
    study.getLots().add(lot);
  }

  private void treatment(Row row) {
    Treatment treatment = NEW.createTreatment();
    treatment.setName(row.get("name"));
    treatment.setStep(row.get("step"));
    treatment.setOn(row.get("on"));
    treatment.setMassIn(Double.valueOf(row.get("in")));
    treatment.setMassOut(Double.valueOf(row.get("out")));
    treatment.setLost(Double.valueOf(row.get("lost")));
    treatment.setSigma(Double.valueOf(row.get("sigma")));
    Make.find(study.getLots(), row.get("lot")).getTreatments().add(treatment);
  }

  private void value(Row row) {
    Reading reading = Make.value(NEW.createReading(), row.get("variable"), row.get("typed"), row.get("unit"));
    reading.setHow(row.word("how", HowGot.class));
    reading.setNote(row.orNull("note"));
    Make.find(study.getLots(), row.get("lot")).getValues().add(reading);
  }

  private void analysis(Row row) {
    Lot lot = Make.find(study.getLots(), row.get("lot"));
    Analysis analysis = NEW.createAnalysis();
    analysis.setName(lot.getName() + ", bulk");
    analysis.setMaterial(lot.getMaterial());
    analysis.setSpecimen(lot.getMaterial().word());
    analysis.setMethod(row.get("method"));
    analysis.setInstrument("Bench spectrometer of the laboratory");
    analysis.setStandards("two reference clays and one reference ore, measured within 2 % of their certificates");
    analysis.setLaboratory("Aldervale Field Club, A. Sly");
    analysis.setOn(row.get("on"));
    analysis.setAreas(Integer.valueOf(row.get("areas")));
    analysis.setIronBasis(row.word("iron_basis", IronBasis.class));
    analysis.setTotalTyped(row.get("total"));
    analysis.setTotal(Double.parseDouble(row.get("total")) / 100);
    Map<String, Double> found = new HashMap<>();
    for (String symbol : COMPONENTS) {
      Component component = Make.percent(NEW.createComponent(), row.get(symbol));
      component.setSymbol(symbol);
      analysis.getComponents().add(component);
      boolean counts = row.get(symbol).matches("[0-9.]+");
      found.put(symbol, counts ? component.getValue() : 0);
    }
    shares.put(lot.getId(), found);
    lot.getAnalyses().add(analysis);
  }
}
