/**
 * Checks against values from outside the project. {@link eddyreach.validation.CheckValuesTest} runs the list that the command prove
 * shows; the other classes, one per published source, check what is more than a value of that list: laws, limits, integration of whole
 * circuits in time.
 *
 * <p>Each value says what kind it is: printed (the number stands in the source; quoted from memory of it and reproduced by an
 * independent program to the digits shown), read (printed, read in the source or in a text that quotes it) or computed (from the
 * source's formula by an independent program). The tolerance is half a unit of the last printed digit unless a reason stands beside it.
 */
package eddyreach.validation;
