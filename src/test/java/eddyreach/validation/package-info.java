/**
 * Checks against values from outside the project, one class per published source.
 *
 * <p>Each value says what kind it is: printed (the number stands in the source; quoted from memory of it and reproduced by an
 * independent program to the digits shown), read (printed, read in the source or in a text that quotes it) or computed (from the
 * source's formula by an independent program). The tolerance is half a unit of the last printed digit unless a reason stands beside it.
 */
package eddyreach.validation;
