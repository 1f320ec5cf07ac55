/** Binds switches, targets, mounts and materials from files, and finds the files. */
package eddyreach.model.read;
