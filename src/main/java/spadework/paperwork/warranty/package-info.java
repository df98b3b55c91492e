// SPDX-License-Identifier: Apache-2.0
/** Certificate, reissue, maintenance card. */
package spadework.paperwork.warranty;
