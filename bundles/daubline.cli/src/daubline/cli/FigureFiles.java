package daubline.cli;

import daubline.charts.Figure;
import daubline.charts.FigureWriter;
import daubline.charts.PdfWriter;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** Writes one figure as a file; its ending says how. */
final class FigureFiles {

  private FigureFiles() {
  }

  /** Writes it. @throws IllegalArgumentException for an ending that no writer has */
  static void write(Figure figure, String title, Path file) throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    FigureWriter writer = writers().stream().filter(w -> name.endsWith("." + w.ending())).findFirst()
        .orElseThrow(() -> new IllegalArgumentException(file + ": end the name in .svg, .pdf or .png"));
    if (file.toAbsolutePath().getParent() != null) {
      Files.createDirectories(file.toAbsolutePath().getParent());
    }
    try (OutputStream out = Files.newOutputStream(file)) {
      writer.write(figure, title, figure.widthMm(), out);
    }
  }

  private static List<FigureWriter> writers() {
    return List.of(new SvgWriter(), new PdfWriter(Instant.EPOCH), new PngWriter(300));
  }
}
