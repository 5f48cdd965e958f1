/** What burnt trials have shown. */
package daubline.engine.design.learn;
