// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

/** How freely a machine can dig: in the open, or with care beside a wall. */
public enum DigKind {
    BULK,
    WALL_SIDE
}
