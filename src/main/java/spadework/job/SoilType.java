// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Soil type as the competent person classed it, 29 CFR 1926 Subpart P Appendix A. */
public enum SoilType {
    STABLE_ROCK,
    A,
    B,
    C,
    NOT_CLASSED
}
