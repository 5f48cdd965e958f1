/**
 * What people write down about a trial – run log, residues, pieces, samples, analyses, pictures – as tables of rows and
 * columns. One definition serves the screen, the blank field sheet and the tests; each entry is one named change.
 */
package daubline.record;
