// SPDX-License-Identifier: Apache-2.0
/** Getting paid: bill, receipt, statement, late notice, release, each step registered with its paper. */
package spadework.office.billing;
