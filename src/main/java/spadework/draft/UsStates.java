// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The states by name, for the two letters of a postal address: USPS Publication 28, appendix B. */
public final class UsStates {
    private static final String TABLE = """
            AK Alaska|AL Alabama|AR Arkansas|AZ Arizona|CA California|CO Colorado|CT Connecticut|DC District of Columbia
            DE Delaware|FL Florida|GA Georgia|HI Hawaii|IA Iowa|ID Idaho|IL Illinois|IN Indiana|KS Kansas|KY Kentucky
            LA Louisiana|MA Massachusetts|MD Maryland|ME Maine|MI Michigan|MN Minnesota|MO Missouri|MS Mississippi
            MT Montana|NC North Carolina|ND North Dakota|NE Nebraska|NH New Hampshire|NJ New Jersey|NM New Mexico
            NV Nevada|NY New York|OH Ohio|OK Oklahoma|OR Oregon|PA Pennsylvania|RI Rhode Island|SC South Carolina
            SD South Dakota|TN Tennessee|TX Texas|UT Utah|VA Virginia|VT Vermont|WA Washington|WI Wisconsin
            WV West Virginia|WY Wyoming
            """;
    private static final Map<String, String> LETTERS = letters();

    private UsStates() {}

    /** The two letters of a state that is named in full, in any case of letters. */
    public static Optional<String> letters(String name) {
        return Optional.ofNullable(LETTERS.get(name.toLowerCase(Locale.ROOT)));
    }

    private static Map<String, String> letters() {
        Map<String, String> letters = new TreeMap<>();
        for (String state : TABLE.strip().split("[|\n]", -1)) {
            letters.put(state.substring(3).strip().toLowerCase(Locale.ROOT), state.substring(0, 2));
        }
        return letters;
    }
}
