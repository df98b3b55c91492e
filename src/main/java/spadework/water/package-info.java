// SPDX-License-Identifier: Apache-2.0
/** The water: what flows in, whether the pipes carry it, whether they fall, and where it leaves. */
package spadework.water;
