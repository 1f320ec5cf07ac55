/** Kind {@code series}: many units with their tolerances. */
package eddyreach.kinds.series;
