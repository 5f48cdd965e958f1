/**
 * What physics and chemistry can say about a bloomery burn before the fire: immutable SI records in and out, every
 * formula with its source, every prediction with its spread. Entry point: {@code BurnForecast}.
 */
package daubline.engine.process;
