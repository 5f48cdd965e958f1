/** The views beside the editors: the study as a tree, checks, origins, figures, tables, the run log. */
package daubline.ui.views;
