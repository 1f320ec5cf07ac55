/** Tables, charts, field pictures and pages as pure functions of a result, and the writing of whole files. */
package eddyreach.report;
