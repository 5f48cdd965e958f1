/** What the Edit menu does to whatever has the keyboard: copy, paste, take out, select, find. */
package daubline.ui.edit;
