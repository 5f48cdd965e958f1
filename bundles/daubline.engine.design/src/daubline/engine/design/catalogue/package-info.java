/** Designs with a closed construction, and space-filling ones. */
package daubline.engine.design.catalogue;
