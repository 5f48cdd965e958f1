/** The tables of the publication, one class each; listed in {@link daubline.export.Tables#all()}. */
package daubline.export.tables;
