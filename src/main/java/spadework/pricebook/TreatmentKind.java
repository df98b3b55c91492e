// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

/**
 * Kinds of wall treatment by property, as the residential code lists them (F-17, F-19 of the code rows: IRC R406.1,
 * R406.2).
 */
public enum TreatmentKind {
    POLYMER_MODIFIED_ASPHALT,
    LIQUID_SYNTHETIC_RUBBER,
    FLEXIBLE_POLYMER_CEMENT,
    FIBER_REINFORCED_CEMENT,
    BITUMINOUS_COATING,
    SHEET_MEMBRANE,
    PORTLAND_PARGE
}
