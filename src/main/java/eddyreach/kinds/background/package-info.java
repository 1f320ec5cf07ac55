/** Kind background: metal behind the target. */
package eddyreach.kinds.background;
