// SPDX-License-Identifier: Apache-2.0
package spadework.law;

/** What a liability cover answers for. */
public enum CoverKind {
    /** Injury to persons in one occurrence. */
    INJURY,
    /** Damage to property in one occurrence. */
    PROPERTY_DAMAGE,
    /** Both in one occurrence, under one limit. */
    INJURY_AND_DAMAGE,
    /** Work that was not done as it has to be; a general liability policy as a rule leaves it out. */
    IMPROPER_WORK;

    /** As it stands in a sentence. */
    public String words() {
        return switch (this) {
            case INJURY -> "injury";
            case PROPERTY_DAMAGE -> "property damage";
            case INJURY_AND_DAMAGE -> "injury and property damage together";
            case IMPROPER_WORK -> "improper work";
        };
    }
}
