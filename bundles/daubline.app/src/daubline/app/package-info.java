/** The product: its start, its window, its perspectives and its colours. */
package daubline.app;
