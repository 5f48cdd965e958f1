/** Taking over tables from files: a preview with its findings first, then one change that undo takes back. */
package daubline.ui.table;
