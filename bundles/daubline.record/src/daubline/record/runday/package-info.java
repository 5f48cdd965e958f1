/** The day of the fire: the clock, the keys, running totals, prompts and the extraction checklist; nothing here draws. */
package daubline.record.runday;
