// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import spadework.office.agreement.ConsentInput;
import spadework.office.agreement.SignatureInput;

/** Who signed, when and how, on the command line. */
final class SignatureOptions {
    @Option(
            names = "--on",
            required = true,
            paramLabel = "DATE",
            description = "The day on which it was signed, as 2026-08-20.")
    private LocalDate on;

    @Option(names = "--by", paramLabel = "NAME", description = "Who signed; once for each person.")
    private List<String> by = List.of();

    @Option(
            names = "--signature",
            paramLabel = "FILE",
            description = "A scan or photo of the signed paper, in the job's folder.")
    private Optional<String> signature = Optional.empty();

    @Option(
            names = "--typed",
            paramLabel = "NAME",
            description = "The name as the signer typed it, instead of a paper.")
    private Optional<String> typed = Optional.empty();

    @Option(
            names = "--consented",
            paramLabel = "DATE",
            description = "With --typed: the day on which the signer agreed to sign without paper.")
    private Optional<LocalDate> consented = Optional.empty();

    @Option(
            names = "--disclosed",
            paramLabel = "DATE",
            description = "With --typed: the day on which the statement of 15 USC 7001(c) was shown, not after that.")
    private Optional<LocalDate> disclosed = Optional.empty();

    @Option(
            names = "--paper",
            paramLabel = "TEXT",
            description = "With --typed: how the signer gets paper, and what it costs.")
    private Optional<String> paper = Optional.empty();

    @Option(
            names = "--withdrawal",
            paramLabel = "TEXT",
            description = "With --typed: how the consent is withdrawn, and what follows.")
    private Optional<String> withdrawal = Optional.empty();

    @Option(
            names = "--equipment",
            paramLabel = "TEXT",
            description = "With --typed: the hardware and software that it takes to open and keep the papers.")
    private Optional<String> equipment = Optional.empty();

    @Option(
            names = "--access",
            paramLabel = "TEXT",
            description = "With --typed: how the signer showed that they can open them.")
    private Optional<String> access = Optional.empty();

    SignatureInput yes() {
        return new SignatureInput(
                on, by, signature, typed, new ConsentInput(consented, disclosed, paper, withdrawal, equipment, access));
    }
}
