// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.scope;

/** The page of the scope on which a step stands. */
public enum StepPage {
    /** Before anybody digs. */
    COVER,
    /** The page of a wall. */
    WALL,
    /** Pipes, outlets and the ground. */
    PIPES
}
