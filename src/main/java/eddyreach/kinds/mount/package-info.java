/** Kind mount: a switch in a wall, a recess, a bracket. */
package eddyreach.kinds.mount;
