/**
 * An open study: the folder it lives in, its files, what was done and can be undone, and what a crash leaves to recover.
 */
package daubline.session;
