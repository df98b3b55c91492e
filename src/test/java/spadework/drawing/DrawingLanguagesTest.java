// SPDX-License-Identifier: Apache-2.0
package spadework.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spadework.drawing.plan.PlanSketch;
import spadework.drawing.profile.ProfileSketch;
import spadework.drawing.section.BodySketch;
import spadework.drawing.section.SectionSketch;
import spadework.drawing.section.WallCovering;
import spadework.drawing.shape.Scene;
import spadework.ground.BodyKind;
import spadework.ground.DigBodies;
import spadework.wording.Language;

/**
 * Drawings in another language, and in words three tenths longer: nothing lies over anything or leaves the sheet, no
 * figure is lost, and no word stays English.
 */
class DrawingLanguagesTest {
    private static final Language SPANISH = Language.of("es");
    private static final WallCovering CAUCHO =
            new WallCovering("caucho sintético líquido", "60 mil", "impermeabilización");
    private static final Pattern FIGURE = Pattern.compile("\\d[\\d.]*\\d|\\d|[½¼¾⅛⅜⅝⅞]");

    private static final Set<String> SCALE_BARS = Set.of("1", "2", "5", "10", "20", "50", "100", "200");
    private static final Map<Language, List<Scene>> DRAWN = new HashMap<>();

    static Stream<Language> languages() {
        return Stream.of(SPANISH, LongerWords.LANGUAGE);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void noLabelLiesOverAnythingOrLeavesTheSheet(Language language) {
        List<String> faults = new ArrayList<>();
        scenes(language).forEach(scene -> faults.addAll(PlanLabels.faults(scene)));

        assertThat(faults).isEmpty();
    }

    /** Words may wrap; a figure that stands on the English sheet stands on this one, and as often in its sentences. */
    @ParameterizedTest
    @MethodSource("languages")
    void everyFigureOfTheEnglishDrawingStandsOnIt(Language language) {
        List<Scene> english = scenes(Language.ENGLISH);
        List<Scene> other = scenes(language);
        for (int i = 0; i < english.size(); i++) {
            Scene one = other.get(i);
            List<String> drawn = figures(drawn(english.get(i)));
            // A legend of two rows makes the house lower, so the bar of the scale may be another one.
            drawn.removeAll(SCALE_BARS);
            assertThat(new TreeSet<>(figures(drawn(one)))).containsAll(drawn);
            assertThat(figures(one.alternative()).stream().sorted().toList())
                    .isEqualTo(figures(english.get(i).alternative()).stream()
                            .sorted()
                            .toList());
            assertThat(one.width()).isEqualTo(english.get(i).width());
            assertThat(one.height()).isLessThan(english.get(i).height() * 1.3 + 40);
        }
    }

    /** What is said beside the figure is said whole: nothing is cut but what is typed into the job. */
    @ParameterizedTest
    @MethodSource("languages")
    void nothingOfItsOwnWordsIsCut(Language language) {
        List<String> english = cut(scenes(Language.ENGLISH));

        assertThat(cut(scenes(language))).hasSizeLessThanOrEqualTo(english.size());
    }

    @Test
    void noEnglishWordStandsOnASpanishDrawingOrInItsSentences() throws IOException {
        Set<String> english = englishWords();
        assertThat(english).contains("trench", "downspout", "shield").hasSizeGreaterThan(100);
        Set<String> typed = typed();
        List<Scene> spanish = scenes(SPANISH);
        assertThat(spanish).hasSizeGreaterThan(400);
        for (Scene scene : spanish) {
            Set<String> left = words(drawn(scene) + " " + scene.alternative());
            left.retainAll(english);
            left.removeAll(typed);
            assertThat(left).as(scene.alternative()).isEmpty();
        }
    }

    /** The check itself must be able to fail: the English drawings are full of such words. */
    @Test
    void anEnglishDrawingIsFound() throws IOException {
        Set<String> left = words(scenes(Language.ENGLISH).get(0).alternative());
        left.retainAll(englishWords());
        left.removeAll(typed());

        assertThat(left).hasSizeGreaterThan(10);
    }

    private static List<Scene> scenes(Language language) {
        return DRAWN.computeIfAbsent(language, DrawingLanguagesTest::draw);
    }

    private static List<Scene> draw(Language language) {
        WallCovering covering = language.equals(SPANISH) ? CAUCHO : SectionJob.RUBBER;
        List<Scene> scenes = new ArrayList<>();
        scenes.add(PlanSketch.of(PlanJob.corner(), language));
        scenes.add(PlanSketch.of(PlanJob.twelveWalls(), language));
        scenes.add(PlanSketch.onItsOwnPage(PlanJob.twelveWalls(), language));
        LongStream.range(0, 120)
                .mapToObj(RandomJobs::of)
                .map(job -> PlanSketch.of(job, language))
                .forEach(scenes::add);
        LongStream.range(0, 20)
                .mapToObj(RandomJobs::of)
                .flatMap(job -> DigBodies.of(job).stream())
                .filter(body -> body.kind() != BodyKind.WALL && body.kind() != BodyKind.WINDOW_WELL)
                .map(body -> BodySketch.of(body, language))
                .forEach(scenes::add);
        LongStream.range(0, 200)
                .mapToObj(SectionJob::of)
                .map(section -> SectionSketch.of(section, covering, language))
                .forEach(scenes::add);
        LongStream.range(0, 120)
                .mapToObj(ProfileSketchJob::random)
                .map(chain -> ProfileSketch.of(chain, language))
                .forEach(scenes::add);
        return scenes;
    }

    private static List<String> cut(List<Scene> scenes) {
        return scenes.stream()
                .flatMap(scene -> PlanLabels.texts(scene).stream())
                .filter(text -> text.endsWith("…"))
                .toList();
    }

    private static String drawn(Scene scene) {
        return String.join(" ", PlanLabels.texts(scene));
    }

    private static List<String> figures(String text) {
        return found(FIGURE, text, Function.identity());
    }

    private static Set<String> words(String text) {
        return new TreeSet<>(found(Pattern.compile("\\p{L}+"), text, word -> word.toLowerCase(Locale.ROOT)));
    }

    private static List<String> found(Pattern pattern, String text, Function<String, String> as) {
        return pattern.matcher(text).results().map(MatchResult::group).map(as).collect(Collectors.toList());
    }

    /** Words of the English bundles that no Spanish one has. */
    private static Set<String> englishWords() throws IOException {
        Set<String> english = new TreeSet<>();
        Set<String> spanish = new TreeSet<>();
        for (String place : List.of("plan", "section", "profile")) {
            english.addAll(words(bundle(place, "words.properties")));
            spanish.addAll(words(bundle(place, "words_es.properties")));
        }
        english.removeAll(spanish);
        return english;
    }

    private static String bundle(String place, String file) throws IOException {
        Properties texts = new Properties();
        texts.load(Files.newBufferedReader(
                Path.of("src/main/resources/spadework/drawing").resolve(place).resolve(file)));
        return String.join("\n", texts.values().stream().map(Object::toString).toList());
    }

    /** What the made-up jobs say themselves. */
    private static Set<String> typed() {
        Set<String> typed = new TreeSet<>();
        Stream.concat(
                        Stream.of(PlanJob.corner(), PlanJob.twelveWalls()),
                        LongStream.range(0, 120).mapToObj(RandomJobs::of))
                .forEach(job -> {
                    job.walls().forEach(wall -> typed.addAll(words(wall.label() + " " + wall.where())));
                    job.water().outlets().forEach(out -> typed.addAll(words(out.label() + " " + out.what())));
                    job.water().drains().forEach(drain -> typed.addAll(words(drain.label())));
                    job.water().mains().forEach(main -> typed.addAll(words(main.label())));
                    job.water().roofLines().forEach(line -> typed.addAll(words(line.label())));
                    job.water().downspouts().forEach(spout -> typed.addAll(words(spout.label())));
                });
        typed.addAll(
                words("Main along the garage P O1 swale along the back lot line door sill Long wall of the old wing"));
        return typed;
    }
}
