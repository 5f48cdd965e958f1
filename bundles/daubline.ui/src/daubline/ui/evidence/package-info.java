/** Pages and dialogs for evidence: reckoning from arcs, comparing reconstructions. */
package daubline.ui.evidence;
