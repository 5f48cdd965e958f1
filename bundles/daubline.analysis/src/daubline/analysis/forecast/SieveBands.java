package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.air.PackedBed;
import daubline.engine.process.shaft.OreSizes;
import daubline.model.Lot;
import daubline.model.SizeBand;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The size of a charcoal or ore lot by its sieve bands: the volume-to-surface mean, on which the resistance of a bed hangs,
 * and the classes, each of which ore reduces at its own pace.
 *
 * @param size m
 * @param classes the bands, at most {@link #MOST}: neighbours of little weight are put together
 * @param from the lot and its bands
 */
record SieveBands(double size, OreSizes classes, Trail from) {

  /** More classes cost time and tell little more. */
  private static final int MOST = 4;

  /** Of the widest band nothing is known but its lower mesh: taken as passing twice that (common practice, no source). */
  private static final double OPEN = 2;

  /** The first lot of a trial of this material that has bands. */
  static Optional<SieveBands> of(Stream<Lot> lots, Material material) {
    return lots.filter(l -> l.getMaterial() == material).flatMap(l -> of(l, bands(l)).stream()).findFirst();
  }

  /** What of the last sieving of a lot stayed in it; otherwise what it got when the lot it comes from was sieved. */
  private static List<SizeBand> bands(Lot lot) {
    List<SizeBand> own = lot.getTreatments().reversed().stream().map(t -> t.getBands().stream().filter(b -> b.getLot() == null || b.getLot() == lot).toList())
        .filter(b -> !b.isEmpty()).findFirst().orElse(List.of());
    return !own.isEmpty() ? own : lot.getFrom().stream().flatMap(l -> l.getTreatments().stream()).flatMap(t -> t.getBands().stream())
        .filter(b -> b.getLot() == lot).toList();
  }

  private static Optional<SieveBands> of(Lot lot, List<SizeBand> bands) {
    List<SizeBand> weighed = bands.stream().filter(b -> middle(b) > 0 && Readings.amount(b).isNumber() && Readings.amount(b).value() > 0).toList();
    if (weighed.isEmpty()) {
      return Optional.empty();
    }
    double size = PackedBed.meanSize(weighed.stream().mapToDouble(SieveBands::middle).toArray(),
        weighed.stream().map(Readings::amount).mapToDouble(Amount::value).toArray());
    String what = lot.getMaterial() == Material.ORE ? "Ore" : "Charcoal";
    return Optional.of(new SieveBands(size, classes(weighed, size), Trail.entry(what + " size, volume-to-surface mean of " + weighed.size() + " sieve bands of lot " + lot.getName(),
        Printed.number(1000 * size, 3) + "\u00A0mm", String.valueOf(lot.getId()))));
  }

  private static OreSizes classes(List<SizeBand> bands, double size) {
    List<double[]> classes = new ArrayList<>();
    bands.forEach(b -> classes.add(new double[] {middle(b), Readings.amount(b).value()}));
    classes.sort(Comparator.comparingDouble(c -> c[0]));
    while (classes.size() > MOST) {
      int light = 0;
      for (int i = 1; i < classes.size() - 1; i++) {
        light = classes.get(i)[1] + classes.get(i + 1)[1] < classes.get(light)[1] + classes.get(light + 1)[1] ? i : light;
      }
      double[] a = classes.remove(light);
      double[] b = classes.get(light);
      classes.set(light, new double[] {PackedBed.meanSize(new double[] {a[0], b[0]}, new double[] {a[1], b[1]}), a[1] + b[1]});
    }
    return OreSizes.of(classes.stream().mapToDouble(c -> c[1]).toArray(), classes.stream().mapToDouble(c -> c[0]).toArray(), size);
  }

  /** The size that has the surface of a band whose mass lies evenly between its meshes; half the mesh for what passes the finest. */
  private static double middle(SizeBand band) {
    double from = band.getMeshFrom() == null ? 0 : band.getMeshFrom();
    double to = band.getMeshTo() == null ? OPEN * from : band.getMeshTo();
    return from > 0 && to > from ? (to - from) / Math.log(to / from) : to / 2;
  }
}
