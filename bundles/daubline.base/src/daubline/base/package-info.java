/**
 * Quantities and units, values with their uncertainty and the kinds of missing, findings, sources and trails.
 * Knows nothing of studies, files or screens.
 */
package daubline.base;
