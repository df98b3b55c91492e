/** Figures as charts: from cost to price, and the range of a price. */
package spadework.drawing.chart;
