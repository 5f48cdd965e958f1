/** Names and words that all parts of the window share. */
package daubline.ui;
