/** Lengths, speeds, pressures and litres, and the text they are printed as. Knows nothing else of the product. */
package rainlap.measure;
