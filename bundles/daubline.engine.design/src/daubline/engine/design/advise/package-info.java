/** Which design for which question and budget. */
package daubline.engine.design.advise;
