// SPDX-License-Identifier: Apache-2.0
package spadework.intake.value;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spadework.intake.source.ValueKind;
import spadework.measure.UnreadableMeasure;

/** The states and the District of Columbia by their two letters (USPS Publication 28, Appendix B). */
public final class States {
    private static final String TABLE = """
            AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,\
            DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,\
            KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,\
            MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,\
            NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,\
            SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,\
            WV West Virginia,WI Wisconsin,WY Wyoming""";

    private static final Map<String, String> CODES = codes();

    private static final String ALLOWED = "the two letters of one of the 50 states, or DC";

    /** A state's two letters. */
    static final ValueKind<String> STATE = new ValueKind<>("\"OH\"", node -> {
        node.sheet().knowWords(node.pointer(), List.copyOf(CODES.keySet()));
        String written = node.text(ALLOWED, "\"OH\"").orElse("");
        if (!node.isSilent() && !CODES.containsKey(written)) {
            node.fault(node.written(), ALLOWED, fix(written));
        }
        return written;
    });

    private States() {}

    /**
     * Reads the two letters of a state.
     *
     * @throws UnreadableMeasure if the text is no state's
     */
    public static String read(String text) throws UnreadableMeasure {
        if (!CODES.containsKey(text)) {
            throw new UnreadableMeasure(ALLOWED, fix(text));
        }
        return text;
    }

    private static String fix(String written) {
        Optional<String> byName = CODES.entrySet().stream()
                .filter(state -> state.getValue().equalsIgnoreCase(written.strip()))
                .map(Map.Entry::getKey)
                .findFirst();
        Optional<String> byLetters = CODES.keySet().stream()
                .filter(code -> code.equalsIgnoreCase(written.strip()))
                .findFirst();
        return byName.or(() -> byLetters)
                .map(code -> "write \"" + code + "\"")
                .orElse("write it as the post office does, as \"OH\"");
    }

    private static Map<String, String> codes() {
        Map<String, String> codes = new TreeMap<>();
        for (String row : TABLE.split(",")) {
            codes.put(row.substring(0, 2), row.substring(3));
        }
        return codes;
    }
}
