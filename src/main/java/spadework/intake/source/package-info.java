// SPDX-License-Identifier: Apache-2.0
/** A file as text, tree and places. */
package spadework.intake.source;
