// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.job.ElectronicConsent;

/**
 * What is known of a signer's consent to sign without paper, part by part as 15 USC 7001(c) asks for it.
 *
 * @param given the day of the consent
 * @param disclosed the day on which the statement was shown
 * @param paper the right to paper, and what it costs
 * @param withdrawal how it is withdrawn, and what follows
 * @param equipment hardware and software that it takes
 * @param access how the signer showed that they can open the papers
 */
public record ConsentInput(
        Optional<LocalDate> given,
        Optional<LocalDate> disclosed,
        Optional<String> paper,
        Optional<String> withdrawal,
        Optional<String> equipment,
        Optional<String> access) {
    /** Nothing is said of it: the signature is on paper. */
    public static final ConsentInput NONE = new ConsentInput(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    static ConsentInput of(ElectronicConsent consent) {
        return new ConsentInput(
                Optional.of(consent.given()),
                Optional.of(consent.disclosed()),
                Optional.of(consent.paper()),
                Optional.of(consent.withdrawal()),
                Optional.of(consent.equipment()),
                Optional.of(consent.access()));
    }

    /** The parts that are missing, each with its option of the command line. */
    List<String> missing() {
        List<String> missing = new ArrayList<>();
        require(missing, given.isPresent(), "the day of the consent (--consented DATE)");
        require(missing, disclosed.isPresent(), "the day on which the statement was shown (--disclosed DATE)");
        require(missing, paper.isPresent(), "the right to paper and what it costs (--paper TEXT)");
        require(missing, withdrawal.isPresent(), "how to withdraw and what follows (--withdrawal TEXT)");
        require(missing, equipment.isPresent(), "the hardware and software that it takes (--equipment TEXT)");
        require(missing, access.isPresent(), "how the signer showed that they can open the papers (--access TEXT)");
        return missing;
    }

    private static void require(List<String> missing, boolean given, String words) {
        if (!given) {
            missing.add(words);
        }
    }

    /** All of it; empty while a part is missing. */
    Optional<ElectronicConsent> whole() {
        return missing().isEmpty()
                ? Optional.of(new ElectronicConsent(
                        given.get(), disclosed.get(), paper.get(), withdrawal.get(), equipment.get(), access.get()))
                : Optional.empty();
    }
}
