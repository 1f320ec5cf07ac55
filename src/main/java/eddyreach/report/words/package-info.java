/** Words, labels and number formats. */
package eddyreach.report.words;
