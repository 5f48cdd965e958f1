/**
 * Tables and their writers. One {@link daubline.export.TableSpec} feeds the grid on screen, CSV, the workbook and the
 * terminal alike.
 */
package daubline.export;
