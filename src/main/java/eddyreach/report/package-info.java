/**
 * Tables, charts, field pictures and pages as pure functions of a result, and the writing of whole files.
 *
 * <p>{@link eddyreach.report.Pictures} turns a result into drawings, {@link eddyreach.report.PictureWriter} turns a drawing
 * into PNG or SVG bytes, {@link eddyreach.report.ResultFiles} writes everything, {@link eddyreach.report.TextReport} is
 * the table for the terminal. SI becomes the shown unit in {@link eddyreach.report.Labels} only.
 */
package eddyreach.report;
