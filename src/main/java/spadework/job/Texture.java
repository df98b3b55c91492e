// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Soil texture by hand test, in the USDA class names, with fill for what was put there. */
public enum Texture {
    GRAVEL,
    SAND,
    LOAMY_SAND,
    SANDY_LOAM,
    LOAM,
    SILT_LOAM,
    SANDY_CLAY_LOAM,
    CLAY_LOAM,
    SILTY_CLAY_LOAM,
    SILTY_CLAY,
    CLAY,
    FILL,
    UNKNOWN
}
