/** The one virtual grid of the window: it asks its model for the cells that are visible, however many there are. */
package daubline.ui.grid;
