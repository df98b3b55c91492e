// SPDX-License-Identifier: Apache-2.0
/**
 * Lengths, areas, films, rates, percentages and units: how a measure is read from text, and how a figure is written
 * for people. It knows neither money nor jobs.
 */
package spadework.measure;
