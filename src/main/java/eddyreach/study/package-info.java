/** What all kinds of study have in common: input, result, presentation, and the files of a result. */
package eddyreach.study;
