/** What the engines say beside what the world measured: the page docs/validation.md, written by a command, never by hand. */
package daubline.validation;
