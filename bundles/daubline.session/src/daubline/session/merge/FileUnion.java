package daubline.session.merge;

import daubline.base.Finding;
import daubline.session.StudyException;
import daubline.session.backup.DataFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;

/**
 * The photographs, logger and laboratory files of two copies: what mine does not have is copied and compared; of two
 * different files of one name both stay, theirs under a new name.
 */
final class FileUnion {

  private final Path mine;
  private final Map<String, Path> copies = new LinkedHashMap<>();
  private final Map<String, String> renamed = new LinkedHashMap<>();
  private final List<Path> written = new ArrayList<>();

  FileUnion(Path mine, Path theirs) throws StudyException {
    this.mine = mine;
    try {
      SortedMap<String, Path> here = DataFiles.of(mine);
      SortedMap<String, Path> there = DataFiles.of(theirs);
      Set<String> taken = new HashSet<>(here.keySet());
      taken.addAll(there.keySet());
      for (Map.Entry<String, Path> file : there.entrySet()) {
        Path same = here.get(file.getKey());
        if (same == null) {
          copies.put(file.getKey(), file.getValue());
        } else if (Files.mismatch(same, file.getValue()) >= 0) {
          clash(file.getKey(), file.getValue(), here, taken);
        }
      }
    } catch (IOException e) {
      throw trouble(e);
    }
  }

  /** Finds a free name, or the copy that an earlier merge made. */
  private void clash(String name, Path file, Map<String, Path> here, Set<String> taken) throws IOException {
    int dot = name.lastIndexOf('.') > name.lastIndexOf('/') ? name.lastIndexOf('.') : name.length();
    for (int number = 2;; number++) {
      String fresh = name.substring(0, dot) + "-" + number + name.substring(dot);
      boolean sameThere = here.containsKey(fresh) && Files.mismatch(here.get(fresh), file) < 0;
      if (sameThere || taken.add(fresh)) {
        renamed.put(name, fresh);
        if (!sameThere) {
          copies.put(fresh, file);
        }
        return;
      }
    }
  }

  private StudyException trouble(IOException e) {
    return new StudyException(Finding.error("merge.files", mine.toString(), "the files of the other copy cannot be taken over: " + e,
        "see whether the disk has room and may be written; nothing was changed"), e);
  }

  /** How many files will be copied. */
  int count() {
    return copies.size();
  }

  /** The new names of theirs. */
  Map<String, String> renamed() {
    return renamed;
  }

  List<Finding> findings() {
    return renamed.entrySet().stream().map(r -> Finding.warning("merge.file", r.getKey(), "two different files have this name",
        "both stay; theirs is called " + r.getValue())).toList();
  }

  /** Copies what is missing; takes all of it away again when one fails. */
  void copy() throws StudyException {
    try {
      for (Map.Entry<String, Path> file : copies.entrySet()) {
        copy(file.getValue(), mine.resolve(file.getKey()));
      }
    } catch (IOException e) {
      takeBack();
      throw trouble(e);
    }
  }

  private void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to.getParent());
    Path beside = to.resolveSibling("." + to.getFileName() + ".writing");
    try {
      Files.copy(from, beside, StandardCopyOption.REPLACE_EXISTING);
      if (Files.mismatch(from, beside) >= 0) {
        throw new IOException(to + " differs from what was copied");
      }
      Files.move(beside, to);
      written.add(to);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Takes away what was copied. */
  void takeBack() {
    for (Path file : written) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        // it stays as a file that no object names; nothing of mine is touched
        file.toFile().deleteOnExit();
      }
    }
    written.clear();
  }
}
