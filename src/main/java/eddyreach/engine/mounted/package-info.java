/** A target before a switch that is mounted in metal. */
package eddyreach.engine.mounted;
