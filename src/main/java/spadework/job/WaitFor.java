// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What work has to wait for. */
public enum WaitFor {
    /** The public one-call service marks its lines: two full working days in most states (from memory). */
    LOCATE("locate", 2, "state one-call laws, two or three working days (from memory)"),
    /** An engineer looks and writes, where the job carries the visit. */
    ENGINEER("engineer", 5, "common practice, no source"),
    /** A washed wall dries before it is coated; calendar days. */
    WALL_DRY("wallDry", 1, "common practice, no source; the product's sheet governs"),
    /** The coating cures before it is covered; calendar days. */
    COATING_CURE(
            "coatingCure",
            2,
            "cure of 24 to 72 h, general page on water-based coatings of a waterproofing handbook; the product's"
                    + " sheet governs"),
    /** The building inspector comes after the coating is seen; working days. */
    INSPECTION("inspection", 1, "common practice, no source");

    private final String key;
    private final int usual;
    private final String source;

    WaitFor(String key, int usual, String source) {
        this.key = key;
        this.usual = usual;
        this.source = source;
    }

    /** As a file names it. */
    public String key() {
        return key;
    }

    /** Days that are taken where nobody says. */
    public int usual() {
        return usual;
    }

    /** Where the usual days come from. */
    public String source() {
        return source;
    }
}
