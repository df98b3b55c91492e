// SPDX-License-Identifier: Apache-2.0
/** The commands on warranties after the job. A day that is not given is today. */
package spadework.cli.warranty;
