// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** What lies inside the wall below grade. */
public enum Space {
    BASEMENT,
    CRAWL_SPACE
}
