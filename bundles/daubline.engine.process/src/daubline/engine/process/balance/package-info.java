/** Masses of oxides and elements: forward from charge to slag and metal, backward from slag to its sources. */
package daubline.engine.process.balance;
