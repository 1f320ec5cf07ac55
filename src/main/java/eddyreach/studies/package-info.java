/** The registry of study kinds, and the reading of study files. */
package eddyreach.studies;
