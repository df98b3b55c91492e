// SPDX-License-Identifier: Apache-2.0
package spadework.pricebook;

import java.util.Locale;
import java.util.Optional;
import spadework.measure.FilmThickness;

/**
 * From which dry film a treatment may be called waterproofing: the list of IRC R406.2 (F-19). What is thinner, or is
 * not on the list, is dampproofing (R406.1, F-17). The list prints each film in inches or mils with a metric equal
 * rounded to half a millimeter or less, as 60 mil (1.5 mm): a film that reaches either of the two earns the word.
 */
public final class CodeFilm {

    /** Where the list stands. */
    public static final String SOURCE = "IRC R406.2";

    private CodeFilm() {}

    /** The least film that the list accepts, in mils; empty where the list has no film for it. */
    public static Optional<FilmThickness> least(TreatmentKind generic) {
        return switch (generic) {
            case POLYMER_MODIFIED_ASPHALT -> Optional.of(new FilmThickness(40));
            case LIQUID_SYNTHETIC_RUBBER, FLEXIBLE_POLYMER_CEMENT -> Optional.of(new FilmThickness(60));
            case FIBER_REINFORCED_CEMENT -> Optional.of(new FilmThickness(125));
            case BITUMINOUS_COATING, SHEET_MEMBRANE, PORTLAND_PARGE -> Optional.empty();
        };
    }

    /** The metric equal that the list prints beside {@link #least}, a little under it. */
    public static Optional<FilmThickness> leastMetric(TreatmentKind generic) {
        return switch (generic) {
            case POLYMER_MODIFIED_ASPHALT -> Optional.of(FilmThickness.ofMillimeters(1));
            case LIQUID_SYNTHETIC_RUBBER, FLEXIBLE_POLYMER_CEMENT -> Optional.of(FilmThickness.ofMillimeters(1.5));
            case FIBER_REINFORCED_CEMENT -> Optional.of(FilmThickness.ofMillimeters(3));
            case BITUMINOUS_COATING, SHEET_MEMBRANE, PORTLAND_PARGE -> Optional.empty();
        };
    }

    /** The list's least film as it prints it: {@code 60 mil (1.5 mm)}. */
    public static Optional<String> printed(TreatmentKind generic) {
        return leastMetric(generic)
                .flatMap(metric -> least(generic)
                        .map(least -> least.text()
                                + String.format(Locale.ROOT, " (%.1f mm)", metric.millimeters())
                                        .replace(".0 mm", " mm")));
    }

    /**
     * Whether a film of that kind may be called waterproofing in any paper. A sheet membrane is taken by the type of
     * the sheet, which this list does not decide, so the answer is no unless the list says yes.
     */
    public static boolean isWaterproofing(TreatmentKind generic, FilmThickness dry) {
        return leastMetric(generic).filter(least -> dry.compareTo(least) >= 0).isPresent();
    }
}
