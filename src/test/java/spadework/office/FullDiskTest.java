// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spadework.disk.FullDisk;
import spadework.draft.Draft;
import spadework.office.CheatStages.Stage;
import spadework.office.agreement.Accepting;
import spadework.office.agreement.Issuing;
import spadework.reason.Reason;
import spadework.register.Register;

/**
 * The disk is full while a step is taken: it says so with the file, nothing is lost and nothing is half, and once there
 * is room the same step is done as if nothing had been.
 */
class FullDiskTest {
    private static final int EVERY = 6;

    @TempDir
    private Path root;

    private enum Step {
        ISSUE(Stage.DRAFT) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return new Issuing(CheatStages.OFFICE, Jobsite.TODAY).issue(site.folder());
            }
        },
        ACCEPT(Stage.ISSUED) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return new Accepting(CheatStages.OFFICE, Jobsite.TODAY)
                        .accept(site.folder(), List.of("OP1"), Jobsite.yes());
            }
        },
        SIGN_ALONE(Stage.ISSUED) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return CheatCase.accept(site, Jobsite.by("2026-08-20", CheatCase.IDA), "OP1");
            }
        },
        CHANGE(Stage.CHANGED) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return CheatCase.decide(site, 2, true, Jobsite.on("2026-09-13"));
            }
        },
        CANCEL(Stage.SIGNED) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return CheatCase.cancel(site, "2026-08-21", Optional.empty(), CheatCase.IDA);
            }
        },
        CLOSE(Stage.BUILT) {
            @Override
            Outcome on(Jobsite site) throws IOException {
                return CheatCase.close(site, "2026-10-01", CheatCase.WORK_ENDED, Optional.empty());
            }
        };

        private final Stage from;

        Step(Stage from) {
            this.from = from;
        }

        abstract Outcome on(Jobsite site) throws IOException;
    }

    @ParameterizedTest
    @EnumSource
    void isToldAndLosesNothing(Step step) throws IOException {
        int operations;
        try (FullDisk disk = FullDisk.from(Integer.MAX_VALUE)) {
            done(step.on(CheatStages.at(step.from).copy(root.resolve("whole"))));
            operations = disk.operations();
        }
        assertThat(operations).isGreaterThan(3);
        for (int from = 1; from <= operations; from += EVERY) {
            Jobsite site = CheatStages.at(step.from).copy(root.resolve("full" + from));
            Optional<String> told = full(from, step, site);
            assertThat(told.orElse("No space left on device"))
                    .as("full from operation %d", from)
                    .contains("No space left on device");
            told.ifPresent(words -> assertThat(words)
                    .as("names the file")
                    .contains(site.folder().toString()));
            assertThat(Register.of(site.folder()).check().faults())
                    .as("full from operation %d", from)
                    .isEmpty();
            assertThat(Draft.read(Files.readString(site.file()))).as("job file").isPresent();
            doneOrThere(step.on(site));
            assertThat(Register.of(site.folder()).check().faults()).isEmpty();
        }
    }

    /** What was told; nothing where the step took so little room that it was done. */
    private static Optional<String> full(int from, Step step, Jobsite site) throws IOException {
        try (FullDisk disk = FullDisk.from(from)) {
            done(step.on(site));
            assertThat(disk.operations()).as("it took less room this time").isLessThan(from);
            return Optional.empty();
        } catch (IOException | UncheckedIOException told) {
            return Optional.of(Reason.of(told));
        }
    }

    /** A signature that was registered before the room ran out is there already. */
    private static void doneOrThere(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            assertThat(refused.reasons()).singleElement().asString().contains("signed 2026-014-P1 already");
        } else {
            done(outcome);
        }
    }

    private static void done(Outcome outcome) {
        assertThat(outcome).isInstanceOfAny(Outcome.Issued.class, Outcome.Standing.class, Outcome.Gathered.class);
    }
}
