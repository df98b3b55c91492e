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
import spadework.office.MisuseStages.Stage;
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
            Outcome on(SampleJobFolder site) throws IOException {
                return new Issuing(MisuseStages.OFFICE, SampleJobFolder.TODAY).issue(site.folder());
            }
        },
        ACCEPT(Stage.ISSUED) {
            @Override
            Outcome on(SampleJobFolder site) throws IOException {
                return new Accepting(MisuseStages.OFFICE, SampleJobFolder.TODAY)
                        .accept(site.folder(), List.of("OP1"), SampleJobFolder.yes());
            }
        },
        SIGN_ALONE(Stage.ISSUED) {
            @Override
            Outcome on(SampleJobFolder site) throws IOException {
                return MisuseCase.accept(site, SampleJobFolder.by("2026-08-20", MisuseCase.IDA), "OP1");
            }
        },
        CHANGE(Stage.CHANGED) {
            @Override
            Outcome on(SampleJobFolder site) throws IOException {
                return MisuseCase.decide(site, 2, true, SampleJobFolder.on("2026-09-13"));
            }
        },
        CANCEL(Stage.SIGNED) {
            @Override
            Outcome on(SampleJobFolder site) throws IOException {
                return MisuseCase.cancel(site, "2026-08-21", Optional.empty(), MisuseCase.IDA);
            }
        },
        CLOSE(Stage.BUILT) {
            @Override
            Outcome on(SampleJobFolder site) throws IOException {
                return MisuseCase.close(site, "2026-10-01", MisuseCase.WORK_ENDED, Optional.empty());
            }
        };

        private final Stage from;

        Step(Stage from) {
            this.from = from;
        }

        abstract Outcome on(SampleJobFolder site) throws IOException;
    }

    @ParameterizedTest
    @EnumSource
    void isToldAndLosesNothing(Step step) throws IOException {
        int operations;
        try (FullDisk disk = FullDisk.from(Integer.MAX_VALUE)) {
            done(step.on(MisuseStages.at(step.from).copy(root.resolve("whole"))));
            operations = disk.operations();
        }
        assertThat(operations).isGreaterThan(3);
        for (int from = 1; from <= operations; from += EVERY) {
            SampleJobFolder site = MisuseStages.at(step.from).copy(root.resolve("full" + from));
            Optional<String> described = full(from, step, site);
            assertThat(described.orElse("No space left on device"))
                    .as("full from operation %d", from)
                    .contains("No space left on device");
            described.ifPresent(words -> assertThat(words)
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
    private static Optional<String> full(int from, Step step, SampleJobFolder site) throws IOException {
        try (FullDisk disk = FullDisk.from(from)) {
            done(step.on(site));
            assertThat(disk.operations()).as("it took less room this time").isLessThan(from);
            return Optional.empty();
        } catch (IOException | UncheckedIOException described) {
            return Optional.of(Reason.of(described));
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
