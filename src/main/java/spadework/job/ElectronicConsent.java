// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.time.LocalDate;

/**
 * What a signer agreed to before signing on a screen, as 15 USC 7001(c)(1) asks for it where a law wants the paper in
 * writing.
 *
 * @param given the day on which the signer agreed to electronic records
 * @param disclosed the day on which the statement of (B) and (C)(i) was shown, not after the consent
 * @param paper how the signer gets paper instead, or a paper copy, and what that costs: (B)(i)(I), (B)(iv)
 * @param withdrawal how the consent is withdrawn, what follows and what it costs: (B)(i)(II), (B)(iii)
 * @param equipment the hardware and software that it takes to open and to keep the records: (C)(i)
 * @param access how the signer showed, on that very equipment, that they can open them: (C)(ii)
 */
public record ElectronicConsent(
        LocalDate given, LocalDate disclosed, String paper, String withdrawal, String equipment, String access) {}
