// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.crew;

/** What a part of the log is about. */
public enum LogKind {
    /** Looks at the trench, which paper and workbook have as a form of their own. */
    DAYS,
    WALL,
    PIPES,
    TESTS,
    JOB
}
