/** What a design can and cannot show, before anything is burnt. */
package daubline.engine.design.judge;
