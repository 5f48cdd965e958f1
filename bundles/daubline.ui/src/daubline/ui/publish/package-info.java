/** The wizard that publishes: what the command publish does, with a preview, progress and a way to stop. */
package daubline.ui.publish;
