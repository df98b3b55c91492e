// SPDX-License-Identifier: Apache-2.0
package spadework.intake;

/** What came of reading a job: it is understood, or it is refused with every fault. */
public sealed interface Reading permits ReadJob, Refused {}
