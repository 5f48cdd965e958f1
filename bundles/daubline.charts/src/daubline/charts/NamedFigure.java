package daubline.charts;

/**
 * A figure with its names.
 *
 * @param id the name of its files
 * @param title its title
 * @param figure the figure
 */
public record NamedFigure(String id, String title, Figure figure) {
}
