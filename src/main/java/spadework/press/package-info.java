/**
 * Finished paperwork and a template become a PDF or a workbook. The template, PDF and spreadsheet libraries are
 * known here only; it cannot see job, pricing or takeoff, so no template can work out a price.
 */
package spadework.press;
