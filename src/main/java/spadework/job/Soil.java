// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** The ground, as found. */
public record Soil(Texture texture, Seepage seepage, SoilType type) {}
