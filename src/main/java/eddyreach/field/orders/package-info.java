/** Azimuthal orders m of at least 1 about a body's own axis: H = T - grad Omega with the skin resolved, eliminated to reflections. */
package eddyreach.field.orders;
