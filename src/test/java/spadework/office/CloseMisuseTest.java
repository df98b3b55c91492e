// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import spadework.office.MisuseStages.Stage;

/** Ways to bend a close: the days of the work, tests, levels, hold points, the last cent. */
class CloseMisuseTest extends MisuseCase {
    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "work before the contract was signed",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt").put("started", "2026-08-19"));
                            return kept(site);
                        },
                        "/asBuilt/started: found 2026-08-19; allowed: a day not before \"on\", 2026-08-20"),
                new Misuse(
                        "work while the buyer could cancel",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt").put("started", "2026-08-24"));
                            return kept(site);
                        },
                        "start-inside-cancellation: The work starts on August 24, 2026. The buyer may cancel "
                                + "until midnight"
                                + " of August 25, 2026"),
                new Misuse(
                        "a flow test before the work began",
                        Stage.BUILT,
                        site -> {
                            site.edit(job -> at(job, "/asBuilt/flowTests/0").put("on", "2026-09-07"));
                            return kept(site);
                        },
                        "/asBuilt/flowTests/0/on: found 2026-09-07; allowed: a day not before \"started\", 2026-09-08"),
                new Misuse(
                        "closed before the work ended",
                        Stage.BUILT,
                        site -> described(close(site, "2026-09-24", WORK_ENDED, Optional.empty())),
                        "The work ended on 2026-09-25, after 2026-09-24"),
                new Misuse(
                        "closed on a day that has not come",
                        Stage.BUILT,
                        site -> described(close(site, "2026-12-24", WORK_ENDED, Optional.empty())),
                        "It cannot have been closed on 2026-12-24"),
                new Misuse(
                        "a warranty that runs from after the close",
                        Stage.BUILT,
                        site -> described(close(
                                site, "2026-10-01", Optional.of(LocalDate.parse("2026-10-05")), Optional.empty())),
                        "The warranty cannot run from 2026-10-05, a day after the close of 2026-10-01"),
                new Misuse(
                        "a warranty that runs from before the work ended",
                        Stage.BUILT,
                        site -> described(close(
                                site, "2026-10-01", Optional.of(LocalDate.parse("2026-09-20")), Optional.empty())),
                        "before the work ended on 2026-09-25"),
                new Misuse(
                        "the close once more on another day",
                        Stage.CLOSED,
                        site -> described(close(site, "2026-10-02", WORK_ENDED, Optional.empty())),
                        "the day of the close is \"2026-10-01\" there, and \"2026-10-02\" was asked for"),
                new Misuse(
                        "the close once more with a waiver",
                        Stage.CLOSED,
                        site -> described(close(site, "2026-10-01", WORK_ENDED, Optional.of("a friend"))),
                        "why a balance is waived is nothing there, and \"a friend\" was asked for"),
                new Misuse(
                        "a line without its flow test",
                        Stage.BUILT,
                        site -> closing(site, job -> ((ArrayNode) job.at("/asBuilt/flowTests")).remove(1)),
                        "close-line-not-tested: No flow test of line R1 is recorded. The proposal promises one"),
                new Misuse(
                        "a flow test that failed",
                        Stage.BUILT,
                        site -> closing(
                                site, job -> at(job, "/asBuilt/flowTests/1").put("passed", false)),
                        "close-flow-test-failed: The last flow test of line R1"),
                new Misuse(
                        "a pipe without levels",
                        Stage.BUILT,
                        site -> closing(site, job -> at(job, "/asBuilt/pipes/1").remove("endInvert")),
                        "close-level-not-recorded: The levels of pipe M1"),
                new Misuse(
                        "a hold point that nobody recorded",
                        Stage.BUILT,
                        site -> closing(site, job -> ((ArrayNode) job.at("/asBuilt/walls/0/holdPoints")).remove(1)),
                        "close-hold-point-missing: Hold point 2 of wall A"),
                new Misuse(
                        "a hold point without photo or waiver",
                        Stage.BUILT,
                        site -> closing(
                                site,
                                job -> at(job, "/asBuilt/walls/0/holdPoints/0").remove("waived")),
                        "close-hold-point-unproved: Hold point 1 of wall A has no photo"),
                new Misuse(
                        "a close with a cent unpaid",
                        Stage.BUILT,
                        site -> closing(site, job -> at(job, "/received/0").put("amount", "$1.00")),
                        "close-unpaid"));
    }

    private static String closing(SampleJobFolder site, Consumer<ObjectNode> change) throws IOException {
        site.edit(change);
        return described(close(site, "2026-10-01", WORK_ENDED, Optional.empty()));
    }
}
