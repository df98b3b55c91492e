// SPDX-License-Identifier: Apache-2.0
package spadework.warranty;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An invented warranty. */
public final class Warranties {
    private static final Contractor CONTRACTOR = new Contractor(
            "Fennimarsh Groundworks",
            "2 Yard Row, Fallow Creek, OH 43099",
            "(614) 555-0117",
            "office@example.com",
            "OH 55-0100");

    private Warranties() {}

    public static Warranty of(String number) {
        return new Warranty(
                number,
                Optional.empty(),
                "2026-014",
                new WarrantyParties(
                        List.of("Ottoline Marsh", "Ivo Marsh"), "7 Quarry Lane, Fallow Creek, OH 43099", CONTRACTOR),
                new WarrantyCoverage(
                        List.of(
                                new CoveredRun("A", "back wall", "42 ft"),
                                new CoveredRun("B", "side wall by the drive", "24 ft")),
                        List.of(new CoveredRun("D1", "4 in perforated pipe", "71 ft")),
                        List.of(
                                new CoveredPart(
                                        "Coated walls",
                                        "no running water through the coated wall",
                                        15,
                                        LocalDate.of(2026, 4, 3),
                                        LocalDate.of(2041, 4, 2)),
                                new CoveredPart(
                                        "Sump pump", "it runs", 2, LocalDate.of(2026, 4, 3), LocalDate.of(2028, 4, 2))),
                        List.of("Water that comes over the top of the wall.", "Condensation")),
                new OwnerTerms(
                        5,
                        10,
                        5,
                        30,
                        2,
                        60,
                        List.of(
                                "Keep the gutters clean, each spring and fall.",
                                "Keep the ground falling away from the house.",
                                "Test the pump each spring.")));
    }
}
