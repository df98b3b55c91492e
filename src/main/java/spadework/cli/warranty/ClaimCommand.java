// SPDX-License-Identifier: Apache-2.0
package spadework.cli.warranty;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.JobParameter;
import spadework.cli.option.ReplyCommand;
import spadework.cli.option.Today;
import spadework.office.aftercare.ClaimInput;
import spadework.office.aftercare.Claims;
import spadework.office.reply.Reply;

/** Writes down a claim, or what became of one. */
@Command(
        name = "claim",
        description = {
            "Write down a claim with --seen, or with --number what became of it.",
            "Nothing is ever changed: a later entry adds to the claim."
        },
        footerHeading = "%nExample:%n",
        footer = {
            "  spadework warranty claim jobs/2026-014 --on 2027-03-01 --seen \"water at the joint\" --wall A",
            "  spadework warranty claim jobs/2026-014 --number 2026-014-CL1 --inspected 2027-03-04 --covered yes"
        })
public final class ClaimCommand extends ReplyCommand {
    @Mixin
    private JobParameter job;

    @Option(names = "--on", paramLabel = "DATE", description = "The day it was made or decided (default: today).")
    private LocalDate on;

    @Option(names = "--seen", paramLabel = "TEXT", description = "What the owner saw: a new claim.")
    private String seen;

    @Option(names = "--since", paramLabel = "DATE", description = "The day it was first seen (default: --on).")
    private LocalDate since;

    @Option(names = "--wall", paramLabel = "LABEL", description = "The wall or pipe that the owner names.")
    private String wall;

    @Option(names = "--certificate", paramLabel = "NUMBER", description = "Which one, where the job has several.")
    private String certificate;

    @Option(names = "--number", paramLabel = "NUMBER", description = "The claim to which this is added.")
    private String number;

    @Option(names = "--inspected", paramLabel = "DATE", description = "The day somebody looked.")
    private LocalDate inspected;

    @Option(names = "--covered", paramLabel = "yes|no", description = "Whether the warranty covers it.")
    private String covered;

    @Option(names = "--clause", paramLabel = "TEXT", description = "What that rests on, in the certificate's words.")
    private String clause;

    @Option(
            names = "--cause",
            paramLabel = "TEXT",
            description = "What brought the water; a claim that is turned down names it.")
    private String cause;

    @Option(names = "--remedy", paramLabel = "TEXT", description = "What is done about it.")
    private String remedy;

    @Option(names = "--cost", paramLabel = "DOLLARS", description = "What that cost you, as 1250.00.")
    private String cost;

    @Option(names = "--closed", paramLabel = "DATE", description = "The day it was done with.")
    private LocalDate closed;

    @Mixin
    DryRunOption dryRun;

    @Override
    protected Reply reply() throws IOException {
        if ((seen == null) == (number == null)) {
            throw new ParameterException(line(), "Give --seen for a new claim, or --number to add to one.");
        }
        LocalDate today = Today.of(line().getCommandSpec());
        ClaimInput asked = new ClaimInput(
                on == null ? today : on,
                Optional.ofNullable(seen),
                Optional.ofNullable(since),
                Optional.ofNullable(wall),
                Optional.ofNullable(inspected),
                Optional.ofNullable(covered),
                Optional.ofNullable(clause),
                Optional.ofNullable(cause),
                Optional.ofNullable(remedy),
                Optional.ofNullable(cost),
                Optional.ofNullable(closed));
        if (number != null) {
            return Claims.add(job.path(), number, asked, today);
        }
        return certificate == null
                ? Claims.open(job.path(), asked, today)
                : Claims.open(job.path(), certificate, asked, today);
    }
}
