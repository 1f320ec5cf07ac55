/** Kind {@code principles}: the same targets before switches that evaluate loss, inductance or both. */
package eddyreach.kinds.principles;
