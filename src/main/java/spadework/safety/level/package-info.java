// SPDX-License-Identifier: Apache-2.0
/** Levels that have to agree: of the ground where pipes meet, and of a drain against the footing beside it. */
package spadework.safety.level;
