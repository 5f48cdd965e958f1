/** Everything that leaves a study: the set of tables and figures of a paper, its report and its data deposit. */
package daubline.publication;
