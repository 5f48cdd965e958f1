package daubline.engine.process.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.balance.ElementBalance.Entry;
import daubline.engine.process.balance.ForwardBalance.Partition;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BalanceTest {

  /** Stoichiometry of fayalite and hercynite with IUPAC atomic weights. */
  @Test
  void fayaliteLocksIron() {
    assertEquals(2.3915, LockedIron.FEO_PER_SILICA, 1e-4);
    assertEquals(1.8589, LockedIron.IRON_PER_SILICA, 1e-4);
    assertEquals(.7046, LockedIron.FEO_PER_ALUMINA, 1e-4);
    assertEquals(.7773, Oxide.FEO.ironShare(), 1e-4);
    assertEquals(.6994, Oxide.FE2O3.ironShare(), 1e-4);
  }

  /** Arithmetic: ore 10 % SiO2, 56 % Fe; slag 25 % SiO2, 62 % FeO: 40.0 kg slag, 36.72 kg metal per 100 kg ore. */
  @Test
  void tracerSlagMass() {
    Portion ore = new Portion("ore", 100,
        Analysis.ofPercent(Oxide.SIO2, 10, Oxide.FE2O3, 56 / Oxide.FE2O3.ironShare()));
    Analysis slag = Analysis.ofPercent(Oxide.SIO2, 25, Oxide.FEO, 62);
    double mass = ForwardBalance.slagByTracer(List.of(ore), Oxide.SIO2, slag);
    assertEquals(40, mass, 1e-9);
    assertEquals(36.72, 56 - mass * slag.iron(), .01);
  }

  private static List<Portion> threeSources() {
    return List.of(new Portion("ore", 20, Analysis.ofPercent(Oxide.FE2O3, 80, Oxide.SIO2, 10)),
        new Portion("lining", 1.5, Analysis.ofPercent(Oxide.SIO2, 70, Oxide.FEO, 5)),
        new Portion("ash", .48, Analysis.ofPercent(Oxide.SIO2, 8)));
  }

  /** Arithmetic: Fe in 11.191 + 0.058, SiO2 3.0884, locked 5.741, at most 5.508 kg metal. */
  @Test
  void mostMetalWithLiningAndAsh() {
    OxideMasses charged = OxideMasses.of(threeSources());
    assertEquals(3.0884, charged.mass(Oxide.SIO2), 1e-9);
    assertEquals(11.191 + .058, charged.iron(), .002);
    assertEquals(5.741, LockedIron.byFayalite(3.0884), .001);
    assertEquals(5.508, LockedIron.mostMetal(charged), .01);
  }

  @Test
  void forwardKeepsEveryElement() {
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 10_000; i++) {
      Portion ore = new Portion("ore", 5 + 30 * random.nextDouble(), randomAnalysis(random));
      Portion lining = new Portion("lining", 4 * random.nextDouble(), randomAnalysis(random));
      Partition partition = new Partition(random.nextDouble(), .3, .02, .8);
      ForwardBalance f = ForwardBalance.of(List.of(ore, lining), partition);
      assertEquals(f.charged().iron(), f.metal() + f.slag().iron(), 1e-12 * f.charged().iron());
      assertEquals(f.charged().mass(Oxide.SIO2), f.slag().mass(Oxide.SIO2), 1e-12);
      double alkali = f.slag().mass(Oxide.K2O) + f.slag().mass(Oxide.NA2O) + f.volatilised();
      assertEquals(f.charged().mass(Oxide.K2O) + f.charged().mass(Oxide.NA2O), alkali, 1e-12);
    }
  }

  private static Analysis randomAnalysis(SplittableRandom r) {
    return Analysis.ofPercent(Oxide.FE2O3, 20 + 50 * r.nextDouble(), Oxide.SIO2, 2 + 20 * r.nextDouble(),
        Oxide.AL2O3, 5 * r.nextDouble(), Oxide.K2O, 2 * r.nextDouble(), Oxide.P2O5, r.nextDouble(),
        Oxide.MNO, 3 * r.nextDouble());
  }

  /** Iron printed beside FeO and Fe2O3: Neumann, Freiberger Forschungshefte D 6, table 2, numbers 1, 2, 4, 5, 8, 10. */
  @ParameterizedTest
  @CsvSource({"54.55, 48.26, 24.29, .06", "51.82, 55.39, 12.62, .08", "48.38, 56.73, 6.03, .08",
      "39.54, 47.74, 3.36, .1", "40.00, 41.12, 11.42, .06", "40.17, 51.70, 0, .03"})
  void ironClosesInExcavatedSlags(double printed, double feo, double fe2o3, double tolerance) {
    assertEquals(printed, 100 * Analysis.ofPercent(Oxide.FEO, feo, Oxide.FE2O3, fe2o3).iron(), tolerance);
  }

  /** Two heaps of one place (Neumann, image 43): short running left more reducible iron in one of them. */
  @Test
  void reducibleIronTellsTheHeapsApart() {
    double large = SlagIndices.reducibleIronIndex(Analysis.ofPercent(Oxide.FEO, 53.20, Oxide.SIO2, 34.39));
    double small = SlagIndices.reducibleIronIndex(Analysis.ofPercent(Oxide.FEO, 65.88, Oxide.SIO2, 20.32));
    assertEquals(.647, large, .001);
    assertEquals(1.357, small, .001);
  }

  /** Erzberg ore and slag (Neumann): manganese and silica disagree on the iron kept in the slag, 39 % against 52 %. */
  @Test
  void tracersThatDisagreeAreBothShown() {
    double keptByManganese = .4838 / (7.19 / 3) / .52;
    double keptBySilica = .4838 / (19.60 / 11) / .52;
    assertEquals(.39, keptByManganese, .005);
    assertEquals(.52, keptBySilica, .005);
    Analysis ore = Analysis.ofPercent(Oxide.SIO2, 11, Oxide.MNO, 3 * .070937 / .054938);
    Analysis slag = Analysis.ofPercent(Oxide.SIO2, 19.60, Oxide.MNO, 9.28);
    double shift = new SlagIndices.Ratio(Oxide.MNO, Oxide.SIO2).logShift(slag, ore);
    assertEquals(Math.log(2.40 / 1.78), shift, .01);
  }

  /** T. Young 2003: 1 kg ore, 0.2 lining, 0.02 ash give 0.4 iron and 0.69 slag. The balance does not close. */
  @Test
  void publishedBalanceKeepsItsRemainder() {
    double ironIn = Oxide.FE2O3.ironShare();
    assertTrue(.4 / ironIn > .54, "printed 54 % needs more iron than pure haematite holds");
    double iron = .54 * ironIn;
    double oxygenLost = iron * (1 / ironIn - 1) + (ironIn - iron) * (1 / ironIn - 1 / Oxide.FEO.ironShare());
    ElementBalance mass = ElementBalance.of("all mass",
        List.of(new Entry("ore", 1, .005, 1, 0), new Entry("lining", .2, .005, 1, 0), new Entry("ash", .02, 0, 1, 0)),
        List.of(new Entry("iron", iron, .005, 1, 0), new Entry("slag", .69, .005, 1, 0),
            new Entry("oxygen", oxygenLost, 0, 1, 0)));
    assertEquals(-.06, mass.remainder(), .01);
    assertFalse(mass.closes());
    assertEquals(mass.in() - mass.out(), mass.remainder(), 0);
  }

  /** Stated yields of practitioners' smelts (D. Markewitz, overviews of experiments) and the bound on recovery. */
  @ParameterizedTest
  @CsvSource({"18, .61, 4.9, 27, .446", "30.5, .53, 4.3, 14, .266", "30.2, .55, 1.7, 6, .102", "8, .575, 2, 25, .435"})
  void publishedYields(double ore, double iron, double bloom, double stated, double recovery) {
    Yield.Masses m = new Yield.Masses(ore, iron, Double.NaN, bloom, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    assertEquals(stated, 100 * Yield.BLOOM_PER_ORE.of(m), 1);
    assertEquals(recovery, Yield.BLOOM_PER_ORE_IRON.of(m), .001);
    assertTrue(Double.isNaN(Yield.BAR_PER_BLOOM.of(m)));
  }

  /** Bloom to bar 539 to 354 g and 1700 to 895 g (Markewitz, table of blooms forged); Corsica 750 to 290 quintals. */
  @Test
  void forgingYields() {
    assertEquals(.66, barPerBloom(.539, .354), .01);
    assertEquals(.53, barPerBloom(1.7, .895), .01);
    Yield.Masses corsica = new Yield.Masses(75000, .65, Double.NaN, 29000, 1, 29000, 29000, Double.NaN);
    assertEquals(.3867, Yield.BAR_PER_ORE.of(corsica), 1e-4);
  }

  private static double barPerBloom(double bloom, double bar) {
    return Yield.BAR_PER_BLOOM.of(new Yield.Masses(0, 0, 0, bloom, 0, 0, bar, 0));
  }

  @Test
  void refusesWhatCannotBeAnAnalysis() {
    assertThrows(IllegalArgumentException.class, () -> Analysis.ofPercent(Oxide.SIO2, -1));
    assertThrows(IllegalArgumentException.class,
        () -> ForwardBalance.slagByTracer(threeSources(), Oxide.TIO2, Analysis.EMPTY));
  }
}
