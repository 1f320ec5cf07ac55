/** The winding: direct-current resistance, skin and proximity effect, inductance and quality. */
package eddyreach.coil;
