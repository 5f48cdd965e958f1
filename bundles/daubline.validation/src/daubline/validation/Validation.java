package daubline.validation;

import daubline.charts.Figure;
import daubline.charts.SvgWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes the validation page and its plots. */
public final class Validation {

  /** The name of the page. */
  public static final String PAGE = "validation.md";

  private static final List<Section> SECTIONS = List.of(new WhereChecked(), new PublishedSmelts(), new MeasuredViscosity(), new ExcavatedSlags(),
      new Recovery(), new NotValidated());

  private Validation() {
  }

  /** All sections in the order of the page. */
  public static List<Section> sections() {
    return SECTIONS;
  }

  /**
   * Writes the page and its plots into a folder, replacing what an earlier run left there.
   *
   * @return the files, the page first
   * @throws IOException when a file cannot be written
   */
  public static List<Path> write(List<Section> sections, Path folder) throws IOException {
    Page page = new Page();
    page.heading(1, "What the numbers were checked against");
    page.text("Written by `releng/run validate`; never by hand. The same program writes the same page on every machine. Data come "
        + "from publications named beside them; the demonstration study is invented and checks nothing here.");
    for (Section section : sections) {
      page.heading(2, section.title());
      section.write(page);
    }
    Path plots = folder.resolve(Page.PLOTS);
    Files.createDirectories(plots);
    clear(plots);
    List<Path> files = new ArrayList<>();
    files.add(Files.write(folder.resolve(PAGE), page.markdown().getBytes(StandardCharsets.UTF_8)));
    for (Map.Entry<String, Figure> plot : page.figures().entrySet()) {
      Path file = plots.resolve(plot.getKey() + ".svg");
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
        new SvgWriter().write(plot.getValue(), plot.getKey().replace('-', ' '), plot.getValue().widthMm(), out);
      }
      files.add(file);
    }
    return files;
  }

  /** A plot that is no longer made must not stay beside the page. */
  private static void clear(Path plots) throws IOException {
    try (var old = Files.newDirectoryStream(plots, "*.svg")) {
      for (Path file : old) {
        Files.delete(file);
      }
    }
  }
}
