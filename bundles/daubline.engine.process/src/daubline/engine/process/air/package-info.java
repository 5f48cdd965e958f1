/** Air and burden: what blows, what resists it, how fast charcoal burns and how long the charge takes to descend. */
package daubline.engine.process.air;
