// SPDX-License-Identifier: Apache-2.0
package spadework.whatif;

/**
 * Why a way to dig is not offered at a wall.
 *
 * @param wall its label
 * @param reason what stands against it
 * @param figure the measure of it: the room that is there, or the depth; empty where none belongs to it
 */
public record Unlawful(String wall, Reason reason, String figure) {

    /** What may stand against a way to dig. */
    public enum Reason {
        /** The lawful slope does not fit before what stands there (29 CFR 1926 Subpart P App. B Table B-1). */
        NO_ROOM,
        /** Benches are for cohesive soil of Type A and B alone (App. B, figures B-1.1 to B-1.3). */
        NO_BENCH_IN_TYPE,
        NO_BENCH_IN_TEXTURE,
        /** Water seeps from the soil, which makes it Type C (App. A (b)), or nobody looked. */
        NO_BENCH_IN_WATER,
        /** Over 20 ft an engineer designs it (29 CFR 1926.652(b), App. F). */
        ENGINEER,
        /** The footing and the shield fill more room than there is. */
        NO_ROOM_FOR_SHIELD
    }
}
