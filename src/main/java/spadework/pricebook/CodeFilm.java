package spadework.pricebook;

import java.util.Optional;
import spadework.measure.FilmThickness;

/**
 * From which dry film a treatment may be called waterproofing: the list of IRC R406.2 (F-19). What is thinner, or is
 * not on the list, is dampproofing (R406.1, F-17).
 */
public final class CodeFilm {

    /** Where the list stands. */
    public static final String SOURCE = "IRC R406.2";

    private CodeFilm() {}

    /** The least film that the list accepts; empty where the list has no film for it. */
    public static Optional<FilmThickness> least(Generic generic) {
        return switch (generic) {
            case POLYMER_MODIFIED_ASPHALT -> Optional.of(new FilmThickness(40));
            case LIQUID_SYNTHETIC_RUBBER, FLEXIBLE_POLYMER_CEMENT -> Optional.of(new FilmThickness(60));
            case FIBER_REINFORCED_CEMENT -> Optional.of(new FilmThickness(125));
            case BITUMINOUS_COATING, SHEET_MEMBRANE, PORTLAND_PARGE -> Optional.empty();
        };
    }

    /**
     * Whether a film of that kind may be called waterproofing in any paper. A sheet membrane is taken by the type of
     * the sheet, which this list does not decide, so the answer is no unless the list says yes.
     */
    public static boolean isWaterproofing(Generic generic, FilmThickness dry) {
        return least(generic).filter(least -> dry.compareTo(least) >= 0).isPresent();
    }
}
