// SPDX-License-Identifier: Apache-2.0
package spadework.form.session;

import java.util.List;
import java.util.stream.Collectors;
import spadework.draft.DraftMerge;
import spadework.form.kit.Messages;

/** Fields that two people changed, in words. */
final class BothChanged {
    private static final int TOLD = 5;

    private BothChanged() {}

    static String described(List<DraftMerge.Clash> clashes) {
        String first = clashes.stream()
                .limit(TOLD)
                .map(one -> Messages.of(
                        "changed.field",
                        one.pointer().substring(1).replace('/', ' '),
                        shown(one.before()),
                        shown(one.mine()),
                        shown(one.theirs())))
                .collect(Collectors.joining("; "));
        return clashes.size() > TOLD ? Messages.of("changed.more", first, clashes.size() - TOLD) : first;
    }

    private static String shown(String value) {
        return value.isEmpty() ? Messages.of("changed.nothing") : value;
    }
}
