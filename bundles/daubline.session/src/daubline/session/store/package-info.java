/** Lots in the store: what they weigh, the water in them, where they came from and where they went. */
package daubline.session.store;
