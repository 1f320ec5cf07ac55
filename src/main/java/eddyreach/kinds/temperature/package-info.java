/** Kind {@code temperature}: on and off distance over the temperature, in parts. */
package eddyreach.kinds.temperature;
