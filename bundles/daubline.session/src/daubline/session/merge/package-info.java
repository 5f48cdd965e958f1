/** Puts two people's copies of a study together: what one changed is taken, what both changed is listed field by field. */
package daubline.session.merge;
