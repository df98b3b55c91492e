// SPDX-License-Identifier: Apache-2.0
/** One wall: its trench and its face. */
package spadework.takeoff.wall;
