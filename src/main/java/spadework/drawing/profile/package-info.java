// SPDX-License-Identifier: Apache-2.0
/** The water from the side. */
package spadework.drawing.profile;
