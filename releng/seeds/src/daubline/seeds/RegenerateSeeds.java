package daubline.seeds;

import java.nio.file.Path;
import java.util.List;

/** Writes the seed studies; the argument is the folder they stand in. */
public final class RegenerateSeeds {

  private RegenerateSeeds() {
  }

  /** The studies, freshly made. */
  static List<SeedStudy> all() {
    return List.of(new OpenSmelts(), new Aldervale());
  }

  /** Writes each study in place of the one that stands there. */
  public static void main(String[] arguments) throws Exception {
    for (SeedStudy study : all()) {
      study.write(Path.of(arguments[0]));
    }
  }
}
