/** Between a study and the design engine: what a series asks for, what it can afford, its plans, and what its trials say. */
package daubline.analysis.design;
