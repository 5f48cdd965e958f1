/** What to burn next. */
package daubline.engine.design.next;
