/** The day of the fire on screen: clock, keys, running totals, prompts and stop criteria; never a dialog in the way. */
package daubline.ui.runday;
