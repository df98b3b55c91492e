// SPDX-License-Identifier: Apache-2.0
package spadework.spelling;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The states and the District of Columbia by their two letters (USPS Publication 28, Appendix B). */
public final class UsStates {
    private static final String TABLE = """
            AL Alabama,AK Alaska,AZ Arizona,AR Arkansas,CA California,CO Colorado,CT Connecticut,DE Delaware,\
            DC District of Columbia,FL Florida,GA Georgia,HI Hawaii,ID Idaho,IL Illinois,IN Indiana,IA Iowa,KS Kansas,\
            KY Kentucky,LA Louisiana,ME Maine,MD Maryland,MA Massachusetts,MI Michigan,MN Minnesota,MS Mississippi,\
            MO Missouri,MT Montana,NE Nebraska,NV Nevada,NH New Hampshire,NJ New Jersey,NM New Mexico,NY New York,\
            NC North Carolina,ND North Dakota,OH Ohio,OK Oklahoma,OR Oregon,PA Pennsylvania,RI Rhode Island,\
            SC South Carolina,SD South Dakota,TN Tennessee,TX Texas,UT Utah,VT Vermont,VA Virginia,WA Washington,\
            WV West Virginia,WI Wisconsin,WY Wyoming""";

    private static final Map<String, String> NAMES = read();

    private UsStates() {}

    /** The names by the two letters. */
    public static Map<String, String> names() {
        return NAMES;
    }

    /** The two letters of a state that is named in full, in any case of letters. */
    public static Optional<String> letters(String name) {
        return NAMES.entrySet().stream()
                .filter(state -> state.getValue().equalsIgnoreCase(name.strip()))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static Map<String, String> read() {
        Map<String, String> names = new TreeMap<>();
        for (String row : TABLE.split(",")) {
            names.put(row.substring(0, 2), row.substring(3));
        }
        return Collections.unmodifiableMap(names);
    }
}
