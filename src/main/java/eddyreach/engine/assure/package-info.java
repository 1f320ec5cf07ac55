/** Assured distances over all tolerances, what a target's distance depends on, and what to change. */
package eddyreach.engine.assure;
