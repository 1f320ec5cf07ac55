/** The program's answers beside values from outside it: published numbers, independent programs, laws of physics. */
package eddyreach.proof;
