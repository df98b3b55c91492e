// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.paperwork.Dossier;
import spadework.paperwork.PaperWords;
import spadework.pricing.Quote;
import spadework.whatif.WallFootBand;

/** Where the price of a foot of wall lies, in words; for the contractor only. */
final class WallFootBandText {
    private WallFootBandText() {}

    /** Rows of two cells; none where no wall is dug. */
    static List<List<String>> rows(Dossier dossier, Quote quote) {
        PaperWords terms = dossier.terms();
        Optional<BigDecimal> foot = WallFootBand.perFoot(dossier.job(), quote.price());
        Optional<WallFootBand> band = WallFootBand.of(dossier.job());
        if (foot.isEmpty() || band.isEmpty()) {
            return List.of();
        }
        String where = switch (band.get().compare(foot.get())) {
            case -1 -> "band.below";
            case 1 -> "band.above";
            default -> "band.inside";
        };
        return List.of(
                List.of(terms.get("band.this"), "$" + foot.get().toPlainString()),
                List.of(terms.get("band.kind"), band.get().kind()),
                List.of(
                        terms.get("band.band"),
                        terms.get(
                                "band.text",
                                "low",
                                "$" + band.get().low(),
                                "high",
                                "$" + band.get().high())),
                List.of(terms.get("band.lies"), terms.get(where)),
                List.of(terms.get("band.source"), WallFootBand.SOURCE));
    }
}
