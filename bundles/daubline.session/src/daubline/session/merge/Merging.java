package daubline.session.merge;

import daubline.base.Finding;
import daubline.model.DataFile;
import daubline.session.StudyException;
import daubline.session.StudySession;
import daubline.session.backup.Bases;
import daubline.session.backup.DataFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** Puts another person's copy, its objects and its files, into an open study. */
public final class Merging implements AutoCloseable {

  private final Packet theirs;
  private final Optional<Packet> base;

  private Merging(Packet theirs, Optional<Packet> base) {
    this.theirs = theirs;
    this.base = base;
  }

  /**
   * Opens the other copy and what both began from.
   *
   * @param mine the folder of the study that is merged into
   * @param theirs the folder of the other copy, or a backup of it
   * @param base what both began from; empty to look for the newest state that both went through
   */
  public static Merging open(Path mine, Path theirs, Optional<Path> base) throws StudyException {
    Packet other = Packet.open(theirs);
    boolean done = false;
    try {
      Optional<Path> found = base.isPresent() ? base : Bases.common(mine, other.folder());
      Merging merging = new Merging(other, found.isPresent() ? Optional.of(Packet.open(found.get())) : Optional.empty());
      done = true;
      return merging;
    } finally {
      if (!done) {
        other.close();
      }
    }
  }

  /** What both began from; empty when nothing is known. */
  public Optional<Path> base() {
    return base.map(Packet::source);
  }

  /** The other copy, as it was named. */
  public Path source() {
    return theirs.source();
  }

  /**
   * Compares; changes nothing.
   *
   * @throws StudyException when the two are no copies of one study
   */
  public StudyMerge compare(StudySession mine) throws StudyException {
    refuseStrangers(mine);
    return StudyMerge.of(mine.study(), theirs.study(), base.map(Packet::study).orElse(null));
  }

  private void refuseStrangers(StudySession mine) throws StudyException {
    for (Packet packet : base.map(b -> List.of(theirs, b)).orElse(List.of(theirs))) {
      if (!Objects.equals(mine.study().getId(), packet.study().getId())) {
        throw new StudyException(Finding.error("merge.strangers", packet.source().toString(),
            "this is no copy of “" + mine.study().getName() + "” but the study “" + packet.study().getName() + "”",
            "merge copies of one study; take single tables over by importing them"));
      }
    }
  }

  /** What is to be known about the files of both before merging. */
  public List<Finding> files(StudySession mine) throws StudyException {
    FileUnion files = new FileUnion(mine.folder(), theirs.folder());
    List<Finding> findings = new ArrayList<>(files.findings());
    if (files.count() > 0) {
      findings.add(Finding.note("merge.files", theirs.source().toString(), files.count() + " files are copied", ""));
    }
    return findings;
  }

  /**
   * Merges as one change that can be undone; files that were copied stay then, named by nothing.
   *
   * @param label the name of the change
   * @param choices whose version of each conflict is taken, by its id; without a choice mine stays
   * @return what could not be kept of the other copy, one line each
   * @throws StudyException when a file cannot be copied; nothing is changed then
   */
  public List<String> apply(StudySession mine, Map<String, Side> choices, String label) throws StudyException {
    StudyMerge merge = compare(mine);
    FileUnion files = new FileUnion(mine.folder(), theirs.folder());
    files.copy();
    List<String> lost = new ArrayList<>();
    boolean done = false;
    try {
      mine.edit(label, () -> {
        lost.addAll(merge.apply(choices));
        mine.study().eAllContents().forEachRemaining(o -> {
          if (o instanceof DataFile file && files.renamed().containsKey(file.getPath()) && isTheirs(mine, file, files)) {
            file.setPath(files.renamed().get(file.getPath()));
          }
        });
      });
      done = true;
      return lost;
    } finally {
      if (!done) {
        files.takeBack();
      }
    }
  }

  /** Notes in a saved study what the other copy went through, so that the next merge begins from there. Only when it cannot be undone any more. */
  public void noteLineage(StudySession mine) throws StudyException {
    Bases.adopt(mine.folder(), theirs.folder());
  }

  /** Whether the object names the file of the other copy, as its digest says; one without a digest goes on naming mine. */
  private boolean isTheirs(StudySession mine, DataFile file, FileUnion files) {
    String sum = file.getSha256();
    if (sum == null || sum.isBlank()) {
      return false;
    }
    return sum.equals(DataFiles.sha256(mine.folder().resolve(files.renamed().get(file.getPath()))));
  }

  @Override
  public void close() {
    theirs.close();
    base.ifPresent(Packet::close);
  }
}
