// SPDX-License-Identifier: Apache-2.0
package spadework.wording;

import java.util.Collections;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.collections4.map.LRUMap;

/**
 * What a pure function made of the texts that it was given last. A company's texts come again with every price, and
 * searching them takes longer than most of what is figured. It may be used by several threads.
 */
public final class TextMemo<T> {
    private static final int KEPT = 1_000;

    private final Map<String, T> kept = Collections.synchronizedMap(new LRUMap<>(KEPT));
    private final Function<String, T> made;

    /** @param made gives the same for the same text, and never nothing */
    public TextMemo(Function<String, T> made) {
        this.made = made;
    }

    /** What the function makes of the text. */
    public T of(String text) {
        return kept.computeIfAbsent(text, made);
    }
}
