/** Dated copies of a study as one file each: written, read back and compared, thinned by a rule, and read again. */
package daubline.session.backup;
