// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two versions of a job that come from one: what one side changed is taken, what both did is never guessed. */
class DraftMergeTest {
    private static Draft draft(String json) {
        return Draft.read(json.replace('\'', '"')).orElseThrow();
    }

    private static DraftMerge.Merged merged(String before, String mine, String theirs) {
        return DraftMerge.of(draft(before), draft(mine), draft(theirs));
    }

    /** Columns: before, mine, theirs, what comes of it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'a':'1'}            | {'a':'1'}            | {'a':'2'}            | {'a':'2'}",
                "{'a':'1'}            | {'a':'2'}            | {'a':'1'}            | {'a':'2'}",
                "{'a':'1'}            | {'a':'2'}            | {'a':'2'}            | {'a':'2'}",
                "{'a':'1','b':'1'}    | {'a':'2','b':'1'}    | {'a':'1','b':'2'}    | {'a':'2','b':'2'}",
                "{'a':'1'}            | {'a':'1','b':'2'}    | {'a':'1','c':'3'}    | {'a':'1','c':'3','b':'2'}",
                "{'a':'1','b':'1'}    | {'a':'1'}            | {'a':'2','b':'1'}    | {'a':'2'}",
                "{'w':[{'label':'A','l':'1','d':'1'}]} | {'w':[{'label':'A','l':'2','d':'1'}]}"
                        + " | {'w':[{'label':'A','l':'1','d':'2'}]} | {'w':[{'label':'A','l':'2','d':'2'}]}",
                "{'w':[{'label':'A'}]} | {'w':[{'label':'A'},{'label':'B'}]} | {'w':[{'label':'A'},{'label':'C'}]}"
                        + " | {'w':[{'label':'A'},{'label':'C'},{'label':'B'}]}",
                "{'w':[{'label':'A'},{'label':'B'}]} | {'w':[{'label':'B'}]}"
                        + " | {'w':[{'label':'A'},{'label':'B','l':'9'}]}"
                        + " | {'w':[{'label':'B','l':'9'}]}",
                "{'w':[{'label':'A'},{'label':'B'}]} | {'w':[{'label':'B'},{'label':'A'}]}"
                        + " | {'w':[{'label':'A','l':'9'},{'label':'B'}]}"
                        + " | {'w':[{'label':'B'},{'label':'A','l':'9'}]}",
                "{'w':[{'label':'A'},{'label':'B'}]} | {'w':[{'label':'A','l':'9'},{'label':'B'},{'label':'C'}]}"
                        + " | {'w':[{'label':'B'},{'label':'A'}]}"
                        + " | {'w':[{'label':'B'},{'label':'A','l':'9'},{'label':'C'}]}",
                "{'n':['x']}          | {'n':['x']}          | {'n':['x','y']}      | {'n':['x','y']}"
            })
    void whatOnlyOneSideChangedIsTaken(String before, String mine, String theirs, String wanted) {
        DraftMerge.Merged merged = merged(before, mine, theirs);
        assertThat(merged.clashes()).isEmpty();
        assertThat(merged.draft().root()).isEqualTo(draft(wanted).root());
    }

    /** Columns: before, mine, theirs; where both changed, what it was, what each made it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'a':'1'} | {'a':'2'} | {'a':'3'} | /a: 1 / 2 / 3",
                "{'a':'1'} | {} | {'a':'3'} | /a: 1 /  / 3",
                "{} | {'a':'2'} | {'a':'3'} | /a:  / 2 / 3",
                "{'n':['x']} | {'n':['x','y']} | {'n':['x','z']} | /n: x / x; y / x; z",
                "{'w':[{'label':'A','l':'1'}]} | {'w':[]} | {'w':[{'label':'A','l':'2'}]}"
                        + " | /w/A: label A, l 1 /  / label A, l 2",
                "{'w':[{'label':'A'},{'label':'B'},{'label':'C'}]} | {'w':[{'label':'B'},{'label':'A'},{'label':'C'}]}"
                        + " | {'w':[{'label':'A'},{'label':'C'},{'label':'B'}]}"
                        + " | /w: label A; label B; label C / label B; label A; label C / label A; label C; label B",
                "{'w':[]} | {'w':[{'label':'B','l':'1'}]} | {'w':[{'label':'B','l':'2'}]} | /w/B/l:  / 1 / 2"
            })
    void whatBothChangedIsShownInWordsAndTheirsStands(String before, String mine, String theirs, String shown) {
        DraftMerge.Merged merged = merged(before, mine, theirs);
        assertThat(merged.clashes())
                .extracting(clash ->
                        clash.pointer() + ": " + clash.before() + " / " + clash.mine() + " / " + clash.theirs())
                .containsExactly(shown);
        assertThat(merged.draft().root()).isEqualTo(draft(theirs).root());
    }

    @Test
    void neitherSideMattersWhereNothingWasChangedTwice() {
        String before = "{'a':'1','w':[{'label':'A','l':'1'}],'n':['x']}";
        String mine = "{'a':'2','w':[{'label':'A','l':'1'}],'n':['x']}";
        String theirs = "{'a':'1','w':[{'label':'A','l':'5'}],'n':['x','y']}";
        assertThat(merged(before, mine, theirs).draft().root())
                .isEqualTo(merged(before, theirs, mine).draft().root());
    }
}
