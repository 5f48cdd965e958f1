/** Paper: blank field sheets, labels with a code, the keys of the day; black only, no lettering below eleven points. */
package daubline.record.print;
