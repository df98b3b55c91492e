package spadework.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
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
            names = "--consent",
            paramLabel = "TEXT",
            description = "With --typed: how the signer agreed to sign without paper.")
    private Optional<String> consent = Optional.empty();

    SignatureInput yes() {
        return new SignatureInput(on, by, signature, typed, consent);
    }
}
