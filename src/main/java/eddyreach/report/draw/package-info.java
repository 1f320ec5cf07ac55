/** Charts and drawings: one theme, pictures to scale, PNG and SVG. */
package eddyreach.report.draw;
