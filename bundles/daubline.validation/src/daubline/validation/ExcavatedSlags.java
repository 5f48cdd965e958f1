package daubline.validation;

import daubline.base.Printed;
import daubline.base.Units;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.balance.SlagIndices;
import daubline.engine.process.slag.Liquidus;
import daubline.engine.process.slag.ViscosityModel;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Excavated slags and published balances: what closes, what does not. */
final class ExcavatedSlags implements Section {

  private static final double RUNNING = 1523.15;
  private static final double LEAST_TOTAL = 95;
  private static final double MOST_TOTAL = 103;

  @Override
  public String title() {
    return "Excavated slags and published balances";
  }

  @Override
  public void write(Page page) {
    page.text("Bulk analyses of excavated slags as printed (sources in `excavated-slags.csv`: B. Neumann, Freiberger Forschungshefte D 6, after Schmid 1932, Gilles, "
        + "Karsten, Ledebur; T. Oldham, Annales des Mines 1859). Iron closure is iron of the printed oxides less iron as printed, in points. Liquidus and viscosity "
        + "are computed, not observed: no measured liquidus of an excavated slag was at hand.");
    List<List<String>> rows = new ArrayList<>();
    Csv.rows("excavated-slags").forEach(r -> rows.add(row(r)));
    page.table(List.of("slag", "total %", "iron closure", "RII", "liquidus °C", "Pa·s at 1250 °C (models from – to)", "remark"), rows);
    pairs(page);
  }

  private static List<String> row(NamedCsvRecord r) {
    Analysis printed = analysis(r);
    double water = Csv.number(r, "water");
    double total = 100 * printed.total() + (Double.isNaN(water) ? 0 : water);
    double closure = 100 * printed.iron() - Csv.number(r, "iron_printed");
    Analysis slag = printed.ironAsFeo();
    Liquidus liquidus = Liquidus.of(slag);
    double[] all = Stream.of(ViscosityModel.values()).mapToDouble(m -> m.of(slag, RUNNING)).sorted().toArray();
    List<String> remarks = new ArrayList<>();
    if (total < LEAST_TOTAL || total > MOST_TOTAL) {
      remarks.add("**total outside 95–103 %**");
    }
    if (Math.abs(closure) > 0.5) {
      remarks.add("**iron does not close**");
    }
    if (!r.getField("note").isBlank()) {
      remarks.add(r.getField("note"));
    }
    return List.of("`" + r.getField("id") + "` " + r.getField("what"), Printed.fixed(total, 1), Double.isNaN(closure) ? "–" : Printed.fixed(closure, 2),
        Printed.fixed(SlagIndices.reducibleIronIndex(printed), 2), Printed.fixed(liquidus.temperature() - Units.ZERO_CELSIUS, 0) + " ± " + Printed.fixed(liquidus.sigma(), 0),
        Printed.number(ViscosityModel.CALIBRATED.of(slag, RUNNING), 2) + " (" + Printed.number(all[0], 2) + " – " + Printed.number(all[all.length - 1], 2) + ")",
        String.join("; ", remarks));
  }

  private static Analysis analysis(NamedCsvRecord r) {
    Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    for (Oxide oxide : List.of(Oxide.FEO, Oxide.FE2O3, Oxide.MNO, Oxide.AL2O3, Oxide.CAO, Oxide.MGO, Oxide.SIO2)) {
      double value = Csv.number(r, oxide.formula());
      if (!Double.isNaN(value)) {
        shares.put(oxide, value / 100);
      }
    }
    return new Analysis(shares);
  }

  private static void pairs(Page page) {
    // Erzberg, roasted ore: Fe 52, Mn 3, SiO2 11 %; slag: Fe 48.38, Mn 7.19, SiO2 19.60 % (Neumann)
    double byManganese = 1 - 48.38 / (7.19 / 3) / 52;
    double bySilica = 1 - 48.38 / (19.60 / 11) / 52;
    // Young 2003: 1 kg anhydrous ore, 0.2 lining, 0.02 ash give 0.4 iron and 0.69 slag; 54 % of the iron to metal
    double most = Oxide.FE2O3.ironShare();
    double iron = 0.54 * most;
    double slag = 1.22 - iron - iron / 0.055845 * 1.5 * 0.015999 - (most - iron) / 0.055845 * 0.5 * 0.015999;
    page.part("Balances that do not close, as they stand").list(List.of(
        "Erzberg, roasted ore and dense Roman slag (B. Neumann): manganese as tracer leaves " + percent(byManganese) + " of the iron to metal, silica " + percent(bySilica)
            + ". The two tracers disagree, and silica leaves no room for lining: the pair is no balance of one smelt.",
        "Siegerland siderite (Mn/Fe 0.28 to 0.54) and three slags of the district (Mn/Fe 0.13, 0.09, 0.24): manganese stays in the slag and iron leaves, so a slag of this "
            + "ore alone cannot have the lower ratio. The ore named is not the ore smelted.",
        "T. Young 2003 (list message): 1 kg of anhydrous ore, 0.2 kg lining and 0.02 kg ash to 0.4 kg iron and 0.69 kg slag. 0.4 kg needs "
            + percent(0.4 / most) + " of the iron of pure haematite where 54 % is stated; with 54 % the slag is " + Printed.fixed(slag, 3) + " kg, "
            + Printed.fixed(0.69 - slag, 3) + " kg less than printed.",
        "Two heaps of one place (B. Neumann): FeO/SiO2 " + Printed.fixed(53.20 / 34.39, 2) + " and " + Printed.fixed(65.88 / 20.32, 2)
            + " with alumina, lime and manganese alike: one ore, two ways of running, which the source blames on short smelts."));
  }

  private static String percent(double share) {
    return Printed.fixed(100 * share, 0) + " %";
  }
}
