/** Kinds approach and materials: targets that come nearer. */
package eddyreach.kinds.approach;
