// SPDX-License-Identifier: Apache-2.0
/** Letters as files that a mail program opens as a draft. Nothing is ever sent from here. */
package spadework.post;
