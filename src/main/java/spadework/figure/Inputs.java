// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spadework.measure.Unit;
import spadework.working.Given;

/** Which of a calculator's inputs were given, by the name of their flag. */
final class Inputs {
    private final Map<String, Boolean> byName = new LinkedHashMap<>();

    Inputs take(String name, boolean given) {
        byName.put(name, given);
        return this;
    }

    /** A number that the user gave. */
    static Given given(String symbol, String name, double value, Unit unit) {
        return Given.of(symbol, name, value, unit, "given");
    }

    /**
     * The name of the single input that is left out and is to be found.
     *
     * @throws WrongInputs if none or more than one is left out
     */
    String leftOut() throws WrongInputs {
        List<String> open = named(false);
        if (open.size() == 1) {
            return open.get(0);
        }
        String all = byName.keySet().stream().map(name -> "--" + name).collect(Collectors.joining(", "));
        String found = named(true).isEmpty() ? "none of them" : String.join(", ", named(true));
        throw new WrongInputs(
                found,
                "all but one of " + all + "; the one left out is found",
                open.isEmpty()
                        ? "leave out the one to be found"
                        : "give " + (open.size() - 1) + " of " + String.join(", ", open));
    }

    private List<String> named(boolean present) {
        return byName.entrySet().stream()
                .filter(entry -> entry.getValue() == present)
                .map(entry -> "--" + entry.getKey())
                .toList();
    }
}
