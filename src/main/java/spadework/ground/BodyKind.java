// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/** What is dug. */
public enum BodyKind {
    WALL,
    WINDOW_WELL,
    MAIN,
    ROOF_LINE,
    DISCHARGE,
    LEAD,
    SUMP_PIT,
    TEST_PIT
}
