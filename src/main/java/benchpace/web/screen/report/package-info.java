/**
 * The look back. Start at {@link benchpace.web.screen.report.ReportPage}.
 */
package benchpace.web.screen.report;
