/** Reads YAML into a tree that knows line and column of each key and value, and collects what is wrong. */
package eddyreach.model.yaml;
