/** Quantities: name, symbol and unit; strict parsing of texts such as {@code 0.6 mm}; formatting. SI inside, units at the edges. */
package eddyreach.units;
