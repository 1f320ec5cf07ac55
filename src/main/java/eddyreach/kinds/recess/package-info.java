/** Kind recess: maps over the dimensions of a recess. */
package eddyreach.kinds.recess;
