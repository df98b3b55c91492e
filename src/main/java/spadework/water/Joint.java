// SPDX-License-Identifier: Apache-2.0
package spadework.water;

/** What stands in a pipe at a station. */
public enum Joint {
    CLEANOUT,
    BEND,
    TEE,
    OUTLET
}
