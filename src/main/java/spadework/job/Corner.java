// SPDX-License-Identifier: Apache-2.0
package spadework.job;

/** Where two dug walls meet. Each corner is named once, so it is counted once. */
public record Corner(WallEnd first, WallEnd second, CornerKind kind) {}
