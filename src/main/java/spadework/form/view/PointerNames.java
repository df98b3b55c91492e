// SPDX-License-Identifier: Apache-2.0
package spadework.form.view;

import java.util.List;
import spadework.draft.FileSchema;
import spadework.draft.Pointer;
import spadework.form.kit.Messages;

/** What a place of the job is called, as {@code Walls 2, Length}. */
public final class PointerNames {
    private PointerNames() {}

    static String named(String pointer) {
        StringBuilder name = new StringBuilder();
        String at = "";
        List<String> keys = Pointer.keys(pointer);
        for (int i = 0; i < keys.size(); i++) {
            at = Pointer.of(at, keys.get(i));
            boolean row = keys.get(i).matches("\\d+");
            boolean last = i == keys.size() - 1;
            boolean list = i + 1 < keys.size() && keys.get(i + 1).matches("\\d+");
            if (row) {
                name.append(' ').append(Integer.parseInt(keys.get(i)) + 1);
            } else if (last || list) {
                name.append(name.isEmpty() ? "" : ", ").append(name(at, keys.get(i)));
            }
        }
        return name.isEmpty() ? Messages.of("place.job") : name.toString();
    }

    private static String name(String pointer, String key) {
        boolean known = FileSchema.job().at(pointer).isPresent();
        return known
                ? Messages.or("field" + pointer.replaceAll("/\\d+(?=/|$)", "").replace('/', '.'), key)
                : key;
    }
}
