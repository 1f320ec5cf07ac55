/** The command line. */
package eddyreach.cli;
