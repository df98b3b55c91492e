// SPDX-License-Identifier: Apache-2.0
package spadework.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A file that is edited keeps its content, the order of its keys and a readable layout. */
class DraftTest {

    private static Draft of(String text) {
        return Draft.read(text.replace('\'', '"')).orElseThrow();
    }

    private static String plain(Draft draft) {
        return draft.text().replaceAll("\\s+", " ").replace('"', '\'').strip();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("samples")
    void readingAndWritingASampleLosesNothingAndSettles(Path job) throws IOException {
        Draft read = Draft.read(Files.readString(job)).orElseThrow();
        assertThat(Draft.read(read.text())).contains(read);
        assertThat(read.text().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThan(400));
    }

    static List<Path> samples() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("sample-quotes"))) {
            List<Path> jobs = folders.map(folder -> folder.resolve("job.json"))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
            assertThat(jobs).hasSizeGreaterThan(5);
            return jobs;
        }
    }

    @ParameterizedTest(name = "{1} at {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # what is there      | where                | typed    | what the file says then
            {}                   | /title               | Back     | { 'title': 'Back' }
            # a new key takes the place that the format gives it
            {'title': 'x'}       | /number              | 7        | { 'number': '7', 'title': 'x' }
            {'number': '7'}      | /title               | x        | { 'number': '7', 'title': 'x' }
            # a key that the format does not know stays
            {'odd': [1, null]}   | /title               | x        | { 'odd': [1, null], 'title': 'x' }
            # what holds a value is made, as a row behind the last is
            {}                   | /site/house/eastWest | 42 ft    | { 'site': { 'house': { 'eastWest': '42 ft' } } }
            {}                   | /customer/names/0    | Ida      | { 'customer': { 'names': ['Ida'] } }
            # a count is a number; one that is typed wrong stays as it was typed
            {}                   | /site/yearBuilt      | 1968     | { 'site': { 'yearBuilt': 1968 } }
            {}                   | /site/yearBuilt      | 196o     | { 'site': { 'yearBuilt': '196o' } }
            {}                   | /site/yearBuilt      | 007      | { 'site': { 'yearBuilt': '007' } }
            # nothing typed takes the value out, and what it leaves empty; never a row
            {'title': 'x', 'site': {'house': {'eastWest': '4 ft'}}} | /site/house/eastWest | `` | { 'title': 'x' }
            {'walls': [{'label': 'A'}]}                             | /walls/0/label       | `` | { 'walls': [ {} ] }
            # a list of words is typed as a series
            {'walls': [{}]}                         | /walls/0/strip       | X-1, Y ; | { 'walls': [ { 'strip': ['X-1', 'Y'] } ] }
            {'walls': [{'strip': ['a, b', 'c']}]}   | /walls/0/strip       | a, b; d  | { 'walls': [ { 'strip': ['a, b', 'd'] } ] }
            {'walls': [{'strip': ['c']}]}           | /walls/0/strip       | ``       | { 'walls': [ {} ] }
            # one depth for the whole wall, or one at each end
            {'walls': [{}]}                         | /walls/0/depth/start | 5 ft | { 'walls': [ { 'depth': '5 ft' } ] }
            {'walls': [{'depth': '5 ft'}]}          | /walls/0/depth/end   | 6 ft | { 'walls': [ { 'depth': { 'start': '5 ft', 'end': '6 ft' } } ] }
            {'walls': [{'depth': {'start': '5 ft', 'end': '6 ft'}}]} | /walls/0/depth/end | `` | { 'walls': [ { 'depth': '5 ft' } ] }
            """)
    void whatIsTypedStandsInTheFile(String before, String pointer, String typed, String after) {
        assertThat(plain(of(before).typed(pointer, typed))).isEqualTo(after);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {'site': {'yearBuilt': 1968}}                 | /site/yearBuilt      | 1968
            {'walls': [{'depth': '5 ft'}]}                | /walls/0/depth/start | 5 ft
            {'walls': [{'depth': '5 ft'}]}                | /walls/0/depth/end   | ``
            {'walls': [{'footing': '5 ft'}]}              | /walls/0/footing/thickness | ``
            {'walls': [{'condition': {'displaced': false}}]} | /walls/0/condition/displaced | false
            {'walls': [{'strip': ['a', 'b']}]}            | /walls/0/strip       | a, b
            {'walls': [{'strip': ['a, b', 'c']}]}         | /walls/0/strip       | a, b; c
            {}                                            | /walls/7/label       | ``
            """)
    void fieldShowsWhatStandsInTheFile(String file, String pointer, String shown) {
        assertThat(of(file).shown(pointer)).isEqualTo(shown);
    }

    @Test
    void rowsAreAddedDoubledMovedAndTakenOut() {
        Draft one = Draft.empty().insertedBlank("/walls", 0).typed("/walls/0/label", "A");
        Draft two = one.duplicated("/walls", 0).typed("/walls/1/label", "B");
        assertThat(plain(two)).isEqualTo("{ 'walls': [ { 'label': 'A' }, { 'label': 'B' } ] }");
        assertThat(plain(two.moved("/walls", 1, 0))).isEqualTo("{ 'walls': [ { 'label': 'B' }, { 'label': 'A' } ] }");
        assertThat(two.moved("/walls", 1, 2)).as("beyond the end").isEqualTo(two);
        assertThat(plain(two.without("/walls/0"))).isEqualTo("{ 'walls': [ { 'label': 'B' } ] }");
        assertThat(plain(one.without("/walls/0"))).isEqualTo("{ }");
        assertThat(plain(Draft.empty().insertedBlank("/notFixed", 0))).isEqualTo("{ 'notFixed': [''] }");
    }

    @Test
    void shortThingsStandOnOneLineAndLongOnesDoNot() {
        Draft draft = of("{'site': {'address': {'street': '418 Quillfeather Lane', 'city': 'Marrowbrook'}},"
                + "'notes': ['" + "a".repeat(80) + "', '" + "b".repeat(80) + "'],"
                + "'walls': [{'label': 'A', 'openings': [{'what': 'x'}]}]}");
        assertThat(draft.text().replace('"', '\'')).isEqualTo("""
                {
                  'site': { 'address': { 'street': '418 Quillfeather Lane', 'city': 'Marrowbrook' } },
                  'notes': [
                    '%s',
                    '%s'
                  ],
                  'walls': [
                    {
                      'label': 'A',
                      'openings': [
                        { 'what': 'x' }
                      ]
                    }
                  ]
                }
                """.formatted("a".repeat(80), "b".repeat(80)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # not one object, or a key twice: an editor would have to lose something
            []
            {"a": 1, "a": 2}
            {"a": 1} x
            {"a": }
            ``
            """)
    void textThatCannotBeKeptIsNotOpened(String text) {
        assertThat(Draft.read(text)).isEmpty();
    }
}
