/** One class per study kind: sweeps, results, warnings and the reasons behind them. */
package eddyreach.study;
