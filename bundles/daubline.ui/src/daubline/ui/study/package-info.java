/** The studies that are open in the window, what was worked out from them, and how they are opened, saved and closed. */
package daubline.ui.study;
