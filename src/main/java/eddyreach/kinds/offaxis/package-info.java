/** Kinds zone and pass: targets off the axis. */
package eddyreach.kinds.offaxis;
