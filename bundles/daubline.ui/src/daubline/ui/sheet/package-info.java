/** The editor of sheets: typed values of a trial, an evidence sheet, a reconstruction, a build or a lot. */
package daubline.ui.sheet;
