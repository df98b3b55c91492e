// SPDX-License-Identifier: Apache-2.0
/** The crew's papers, and the crew's log on its way back into the job. */
package spadework.office.crew;
