/** How the window looks: colours of the theme, icons of our own, the furnace motif. */
package daubline.ui.look;
