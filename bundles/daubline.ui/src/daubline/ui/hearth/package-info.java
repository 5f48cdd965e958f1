/** Hearthside, the page on which the window opens. */
package daubline.ui.hearth;
