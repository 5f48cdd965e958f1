/** Thermochemistry of gases, iron oxides and carbon: heats, equilibria, combustion. SI, temperatures in kelvin. */
package daubline.engine.process.thermo;
