// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What a foundation wall is built of. */
public enum WallKind {
    POURED,
    BLOCK,
    STONE,
    BRICK
}
