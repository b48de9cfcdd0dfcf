/**
 * The look back on a class. Start at {@link benchpace.web.report.ReportPages}.
 */
package benchpace.web.report;
