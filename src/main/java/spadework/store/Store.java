// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.io.IOException;
import java.util.List;
import java.util.Map;

/**
 * What an office keeps, whichever home it has: the firm's own folder (company, price book, state rules) and a folder
 * for each job (its file, its register, what was issued, pictures). Every change is written whole or not at all, and
 * only over the state that it was made from.
 *
 * <p>All methods throw {@link StoreFailure} where the home cannot do what is asked: it cannot be reached, its door is
 * shut to whoever asks, its disk is full, it went away in between.
 */
public interface Store extends AutoCloseable {

    /** Every job's folder, in the order of the names. */
    List<FolderHead> list() throws IOException;

    /**
     * The job folders in which all the words occur, each at the beginning of a word.
     *
     * @param most no more than so many, those changed last first
     */
    List<FolderHead> find(String words, int most) throws IOException;

    /**
     * What tells the state of each of these folders from every other ({@link StoredFolder#version()}); one in which
     * nothing lies is left out.
     */
    Map<String, String> versions(List<String> names) throws IOException;

    /** The highest count of a year among names and numbers, 14 for {@code 2026-014}; 0 for none. */
    int lastNumber(int year) throws IOException;

    /** A folder as it is now; an empty one where nothing was written yet. */
    StoredFolder folder(String name) throws IOException;

    /**
     * The bytes of a file of a folder, as its {@link StoredFile} names them.
     *
     * @throws java.nio.file.NoSuchFileException if the folder holds them no more
     */
    byte[] content(String name, StoredFile file) throws IOException;

    /**
     * Writes what a step changed.
     *
     * @return the folder as it is then
     * @throws FolderMoved if the folder is no longer what the step began with; nothing is written
     * @throws StoreFailure if the register would lose a line
     */
    StoredFolder write(FolderChange change) throws IOException;

    /** What is done while nobody else takes a step in a folder. */
    @FunctionalInterface
    interface Work<T> {
        T done() throws IOException;
    }

    /**
     * Does something while nobody else takes a step in that folder; it waits for whoever does.
     *
     * @throws StoreFailure if somebody else takes too long
     */
    <T> T alone(String name, Work<T> work) throws IOException;

    /** The states that a folder had, the newest first; a home that keeps none tells of the one that is. */
    List<FolderVersion> history(String name) throws IOException;

    /** Notes that somebody has a folder open, for as long as it is noted again. */
    void open(String name, String who) throws IOException;

    /** Notes that somebody has closed a folder. */
    void left(String name, String who) throws IOException;

    /** Who else had a folder open in the last two minutes; nobody where the home cannot tell. */
    List<String> openTo(String name, String who) throws IOException;

    /** What the home is called in messages. */
    String called();

    @Override
    void close();
}
