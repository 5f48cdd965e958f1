/** What the parts of a screen are: on F1 the term, its unit, how it is measured and why it is asked. */
package daubline.ui.explain;
