package daubline.ui.publish;

import daubline.base.Finding;
import daubline.publication.Publication;
import daubline.ui.Words;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** What was written and what is to be looked after, in a few lines. */
final class Summary {

  private static final int MOST = 12;

  private Summary() {
  }

  static String of(Publication.Written written, Path folder) {
    long deposited = written.files().stream().filter(f -> f.startsWith("deposit/")).count();
    String counts = Words.of("publish.counts", written.tables().size(), written.figures().size(), folder)
        + (deposited == 0 ? "" : "\n" + Words.of(written.findings().stream().anyMatch(Finding::isError) ? "publish.unfit" : "publish.fit", deposited));
    String said = java.util.stream.Stream.concat(written.findings().stream().map(Finding::toString), written.remarks().stream()).limit(MOST)
        .collect(Collectors.joining("\n"));
    return said.isEmpty() ? counts : counts + "\n\n" + said;
  }
}
