/** A switch at one resolution with a target before it: trim, approach, switching distances with their error bars, loss budgets, field samples. */
package eddyreach.engine.core;
