// SPDX-License-Identifier: Apache-2.0
package spadework.finding;

/**
 * Where in a file something stands.
 *
 * @param file the file as the user named it
 * @param line from 1; 0 when the fault is about the file as a whole
 * @param column from 1; 0 when the fault is about the file as a whole
 * @param pointer JSON pointer, empty for the whole document
 */
public record Place(String file, int line, int column, String pointer) {

    public static Place ofFile(String file) {
        return new Place(file, 0, 0, "");
    }

    /** Text an editor can follow, as {@code job.json:4:17 /walls/0/length}. */
    public String text() {
        String position = line > 0 ? file + ":" + line + ":" + column : file;
        return pointer.isEmpty() ? position : position + " " + pointer;
    }
}
