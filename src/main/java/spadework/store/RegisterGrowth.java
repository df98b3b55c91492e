// SPDX-License-Identifier: Apache-2.0
package spadework.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The register only grows: a step adds lines to it and leaves those that are there. */
public final class RegisterGrowth {
    private RegisterGrowth() {}

    /**
     * The lines of a register as they stand in its file, without what a crash left half written behind the last.
     *
     * @param register bytes of the file; each whole line ends in a line feed
     */
    public static List<String> lines(byte[] register) {
        String text = new String(register, StandardCharsets.UTF_8);
        List<String> lines = new ArrayList<>();
        int from = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
            lines.add(text.substring(from, end));
            from = end + 1;
        }
        return lines;
    }

    /** The file of these lines. */
    public static byte[] file(List<String> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line).append('\n'));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /**
     * The lines that are new.
     *
     * @param name of the folder, for the message
     * @throws StoreFailure if a line is gone or says something else
     */
    public static List<String> check(String name, byte[] before, byte[] after) throws StoreFailure {
        List<String> old = lines(before);
        List<String> now = lines(after);
        for (int i = 0; i < old.size(); i++) {
            if (i >= now.size() || !now.get(i).equals(old.get(i))) {
                throw new StoreFailure(StoreFailure.Why.REGISTER_CUT, null, name, i + 1);
            }
        }
        return now.subList(old.size(), now.size());
    }
}
