// SPDX-License-Identifier: Apache-2.0
package spadework.office.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where the jobs on screen are at home: in their folders alone, or in an office of which those folders are copies. Who
 * works on a job reads and writes its folder in either case; a home sees to it that the office has the same.
 */
public interface JobsHome {
    /** The folders are all there is, wherever they lie. */
    JobsHome FOLDERS = new PlainFolders(null);

    /** The folders are all there is, and jobs lie in this one. */
    static JobsHome in(Path folder) {
        return new PlainFolders(folder);
    }

    /** Something that is done in a folder. */
    @FunctionalInterface
    interface Work<T> {
        T done() throws IOException;
    }

    /** The folder of all jobs; nothing where they lie wherever somebody put them. */
    Optional<Path> tree();

    /** What the office is called in messages; empty where the folder says all. */
    String called();

    /** Begins a job with the next free number of its year, and answers its file. */
    Path begin(String job, int year) throws IOException;

    /**
     * The jobs of the office in which all words occur, those changed last first; without words of any.
     *
     * @param most no more than so many
     */
    List<FoundJob> found(String words, int most) throws IOException;

    /**
     * A job that was found.
     *
     * @param state what tells this state of the job, and of what it is priced by, from every other
     */
    record FoundJob(Path file, String state) {}

    /** Makes the folder of a job, and that of the firm, what the office has. */
    void refresh(Path job) throws IOException;

    /** The same for every job below a folder, as far as is needed to read and price them. */
    void refreshAll(Path folder) throws IOException;

    /**
     * Saves a job, in the office before its folder.
     *
     * @throws IOException if it cannot be saved; nothing is written then
     */
    JobFile.Saved save(JobFile file, String text) throws IOException;

    /**
     * Does something in a job's folder while nobody else takes a step there; the office gets what it changed in the
     * job and in the firm's files, or nothing.
     */
    <T> T step(Path job, Work<T> work) throws IOException;

    /** Whether others work on a job, or on the jobs of a folder, from machines of their own. */
    boolean isShared(Path place);

    /** Notes that a job is open here, and answers who else has it open; nobody where that cannot be told. */
    List<String> others(Path job) throws IOException;

    /** What tells the firm's books and rules from every other state of them; empty where only this machine has them. */
    String books();

    /** Notes that a job is no longer open here. */
    void left(Path job) throws IOException;
}
