/** Pages of a series: what is planned with, the proposed and the frozen plan, what moved what and what to burn next. */
package daubline.ui.plan;
