// SPDX-License-Identifier: Apache-2.0
/** Purchase orders of a job, printed for its suppliers. */
package spadework.office.buying;
