// SPDX-License-Identifier: Apache-2.0
/** The scope of work. */
package spadework.paperwork.scope;
