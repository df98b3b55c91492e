// SPDX-License-Identifier: Apache-2.0
package spadework.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spadework.ground.BodyKind;
import spadework.ground.DigBody;
import spadework.measure.Length;
import spadework.measure.Series;

/**
 * What findings call a body of ground.
 *
 * @param kind in the singular, as {@code wall}
 * @param label of the wall, run, outlet or pit
 */
record BodyNames(String kind, String label) {
    private static final String ALONE = "trench";

    static BodyNames of(DigBody body) {
        String kind = body.kind() == BodyKind.DISCHARGE
                ? "discharge pipe"
                : body.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return new BodyNames(kind, body.label());
    }

    /** Something that is no body of a job. */
    static BodyNames alone(String about) {
        return new BodyNames(ALONE, about);
    }

    /** As {@code walls A, B, and D and main M1}. */
    static String joined(List<BodyNames> names) {
        List<String> parts = byKind(names).entrySet().stream()
                .map(kind -> kind.getKey() + (kind.getValue().size() > 1 ? "s " : " ") + Series.text(kind.getValue()))
                .toList();
        return Series.text(parts);
    }

    /** Labels by kind, for papers in other languages; empty where one of them is no body of a job. */
    static Map<String, List<String>> bodies(List<BodyNames> names) {
        return names.stream().anyMatch(name -> name.kind().equals(ALONE)) ? Map.of() : byKind(names);
    }

    private static Map<String, List<String>> byKind(List<BodyNames> names) {
        Map<String, List<String>> byKind = new LinkedHashMap<>();
        names.forEach(name ->
                byKind.computeIfAbsent(name.kind(), kind -> new ArrayList<>()).add(name.label()));
        return byKind;
    }

    /** Their labels, each once, as a finding is about them. */
    static String labels(List<BodyNames> names) {
        return String.join(", ", names.stream().map(BodyNames::label).distinct().toList());
    }

    /** The least and the greatest of some lengths, or the one that all of them print. */
    static String range(List<Length> lengths) {
        String least = lengths.stream().min(Length::compareTo).orElseThrow().text();
        String most = lengths.stream().max(Length::compareTo).orElseThrow().text();
        return least.equals(most) ? least : least + " to " + most;
    }
}
