/** The store: steps of a lot, splitting and putting together. */
package daubline.ui.store;
