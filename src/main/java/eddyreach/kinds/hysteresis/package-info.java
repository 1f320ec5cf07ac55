/** Kind {@code hysteresis}: on and off distance against vibration, stroke and noise. */
package eddyreach.kinds.hysteresis;
