/** Figures drawn off screen: one specification feeds the window, PNG and SVG. The only place that uses AWT. */
package daubline.charts;
