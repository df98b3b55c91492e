// SPDX-License-Identifier: Apache-2.0
package spadework.office.records;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import spadework.intake.Intake;
import spadework.intake.ReadJob;
import spadework.intake.Reading;
import spadework.intake.Refused;

/** The source of a signed contract, unpacked and read: the job as agreed, and how to read it with the books of then. */
public final class SignedSource {
    private final JobSource source;
    private final Intake intake;
    private final ReadJob agreed;

    private SignedSource(JobSource source, Intake intake, ReadJob agreed) {
        this.source = source;
        this.intake = intake;
        this.agreed = agreed;
    }

    /**
     * Unpacks and reads a source.
     *
     * @param file of the job, for faults
     * @throws IOException if it is no archive, or the job in it cannot be read
     */
    private static SignedSource of(byte[] archive, Path file) throws IOException {
        JobSource source = JobSource.read(archive);
        Intake then = Intake.startingFrom(
                source.files().get(JobSource.BUNDLED_BOOK), source.files().get(JobSource.BUNDLED_RULES));
        Reading job = read(then, source, source.text(JobSource.JOB), file);
        if (job instanceof Refused refused) {
            throw new IOException("the source of the contract beside " + file + " cannot be read: "
                    + refused.faults().get(0).text());
        }
        return new SignedSource(source, then, (ReadJob) job);
    }

    private static Reading read(Intake intake, JobSource source, String text, Path file) {
        return intake.readKept(text, file, source.files(), source.files().get(JobSource.BUNDLED_BOOK));
    }

    /** The job that both sides signed. */
    ReadJob agreed() {
        return agreed;
    }

    /** Reads a job with the company, the books and the state rules that were signed. */
    Reading read(String text, Path file) {
        return read(intake, source, text, file);
    }

    /** The source asked for last: at the next keystroke an archive of the same bytes is not read again. */
    public static final class Latest {
        private volatile Optional<Kept> kept = Optional.empty();

        private record Kept(byte[] archive, Path file, SignedSource source) {}

        /**
         * The source in an archive.
         *
         * @throws IOException if it cannot be read
         */
        public SignedSource of(byte[] archive, Path file) throws IOException {
            Optional<Kept> before = kept;
            if (before.isPresent() && before.get().file.equals(file) && Arrays.equals(before.get().archive, archive)) {
                return before.get().source;
            }
            SignedSource source = SignedSource.of(archive, file);
            kept = Optional.of(new Kept(archive, file, source));
            return source;
        }
    }
}
