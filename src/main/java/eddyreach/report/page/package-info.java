/** Pages, terminal text, JSON, tables, and the writing of whole folders. */
package eddyreach.report.page;
