/** Immutable descriptions of switches, targets and mounts, and the reader that binds them from YAML with line-numbered errors. */
package eddyreach.model;
