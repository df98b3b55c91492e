// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Why a contract is changed. */
public enum ChangeReason {
    WORK_ASKED_FOR,
    ROCK,
    BURIED_DEBRIS,
    TREE_ROOTS,
    HIDDEN_DAMAGE,
    UNMARKED_LINE,
    GROUND_WATER,
    DEEPER_THAN_STATED,
    WORSE_SOIL,
    LESS_WORK,
    TIME_ONLY
}
