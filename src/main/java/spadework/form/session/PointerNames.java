// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.List;
import spadework.draft.Draft;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.form.kit.Messages;

/** What a place of the job is called: {@code Wall B, Length}, or {@code Payments 2, When} where rows have no label. */
public final class PointerNames {
    private PointerNames() {}

    /** @param job whose rows say their labels */
    public static String named(String pointer, Draft job) {
        StringBuilder name = new StringBuilder();
        String at = "";
        List<String> keys = Pointer.keys(pointer);
        for (int i = 0; i < keys.size(); i++) {
            at = Pointer.of(at, keys.get(i));
            boolean last = i == keys.size() - 1;
            boolean list = !last && keys.get(i + 1).matches("\\d+");
            if (list) {
                String row = Pointer.of(at, keys.get(i + 1));
                append(name, row(row, at, keys, i, job));
                at = row;
                i++;
            } else if (last) {
                append(name, name(at, keys.get(i)));
            }
        }
        return name.isEmpty() ? Messages.of("place.job") : name.toString();
    }

    private static void append(StringBuilder name, String part) {
        name.append(name.isEmpty() ? "" : ", ").append(part);
    }

    /** A row by its label, where lists of its kind have labels and it has one; else by its number. */
    private static String row(String row, String list, List<String> keys, int at, Draft job) {
        String label = job.shown(row + "/label");
        String labeled = Messages.or("row" + words(list), Messages.or("row." + keys.get(at), ""));
        return label.isEmpty() || labeled.isEmpty()
                ? name(list, keys.get(at)) + " " + (Integer.parseInt(keys.get(at + 1)) + 1)
                : labeled.replace("{0}", label);
    }

    private static String name(String pointer, String key) {
        boolean known = FileSchema.job().at(pointer).isPresent();
        return known ? Messages.named(pointer).orElse(key) : key;
    }

    /** A place as the keys of words have it. */
    private static String words(String pointer) {
        return pointer.replaceAll("/\\d+(?=/|$)", "").replace('/', '.');
    }
}
