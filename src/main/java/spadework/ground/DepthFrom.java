// SPDX-License-Identifier: Apache-2.0
package spadework.ground;

/** Where the depth of a body comes from. */
public enum DepthFrom {
    /** Grade less invert, or as measured at the wall. */
    MEASURED,
    /** Somebody typed it and no level says whether it is right. */
    TYPED,
    /** Nobody said; the usual one is taken. */
    USUAL
}
