// SPDX-License-Identifier: Apache-2.0
/** Issue, accept, change, close. */
package spadework.office.agreement;
