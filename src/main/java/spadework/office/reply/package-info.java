// SPDX-License-Identifier: Apache-2.0
/** What a step answers, as text. */
package spadework.office.reply;
