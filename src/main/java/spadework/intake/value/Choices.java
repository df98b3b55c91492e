// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import spadework.intake.source.Excerpt;
import spadework.intake.source.NearestName;
import spadework.intake.source.ValueKind;
import spadework.measure.Unit;
import spadework.pricebook.Measure;
import spadework.spelling.FormerSpelling;

/** Values that are one word, or a few, out of a fixed list. A word in its former spelling is the same word. */
public final class Choices {
    public static final ValueKind<Unit> UNIT =
            among(Arrays.stream(Unit.values()).filter(Unit::isCounted), Unit::symbol);
    public static final ValueKind<Measure> MEASURE = among(Arrays.stream(Measure.values()), Measure::trade);

    /** Those of enums, made once: a thousand jobs ask for the same few. */
    private static final Map<Class<?>, ValueKind<?>> OF_ENUMS = new ConcurrentHashMap<>();

    private Choices() {}

    /** The constants of an enum in lower case, as {@code crawl space}. */
    @SuppressWarnings("unchecked")
    public static <E extends Enum<E>> ValueKind<E> of(Class<E> type) {
        return (ValueKind<E>)
                OF_ENUMS.computeIfAbsent(type, asked -> among(Arrays.stream(type.getEnumConstants()), Choices::word));
    }

    /** One of some words of the file format itself. */
    public static ValueKind<String> words(List<String> words) {
        return among(words.stream(), word -> word);
    }

    /** Single letters stay capital, as in soil type B. */
    public static String word(Enum<?> constant) {
        String name = constant.name();
        return name.length() == 1 ? name : name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static <T> ValueKind<T> among(Stream<T> all, Function<T, String> name) {
        List<T> values = all.toList();
        List<String> words = values.stream().map(name).toList();
        boolean plain = words.stream().noneMatch(word -> word.contains(","));
        String allowed = String.join(plain ? ", " : " | ", words);
        String example = words.size() == 1 ? Excerpt.quoted(words.get(0)) : "one of " + allowed + ", in quotes";
        return new ValueKind<>(example, node -> {
            node.sheet().knowWords(node.pointer(), words);
            Optional<String> text = node.text(allowed, example);
            if (text.isEmpty()) {
                return values.get(0);
            }
            int index = words.indexOf(text.get());
            index = index < 0 ? words.indexOf(FormerSpelling.current(text.get())) : index;
            if (index < 0) {
                node.fault(node.written(), allowed, fix(text.get(), words));
            }
            return values.get(Math.max(index, 0));
        });
    }

    private static String fix(String written, List<String> words) {
        Optional<String> meant = words.size() == 1 ? Optional.of(words.get(0)) : NearestName.of(written, words);
        return meant.map(word -> "write \"" + word + "\"").orElse("write one of them");
    }
}
