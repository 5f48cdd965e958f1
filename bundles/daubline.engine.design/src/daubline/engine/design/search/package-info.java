/** Optimal designs by coordinate exchange. */
package daubline.engine.design.search;
