/** Kind {@code disturbance}: external alternating fields. */
package eddyreach.kinds.disturbance;
