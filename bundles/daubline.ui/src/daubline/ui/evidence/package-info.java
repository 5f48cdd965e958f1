/** Pages and dialogs for evidence: reckoning from arcs, reading reports, measuring pictures, comparing reconstructions. */
package daubline.ui.evidence;
