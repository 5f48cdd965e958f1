/** How many trials stock, people and days allow, and when they can be burnt. */
package daubline.engine.design.stock;
