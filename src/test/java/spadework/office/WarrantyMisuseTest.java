// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.office.MisuseStages.Stage;
import spadework.office.aftercare.ClaimInput;
import spadework.office.aftercare.Claims;
import spadework.office.aftercare.TransferInput;
import spadework.office.aftercare.Transfers;
import spadework.office.reply.Reply;
import spadework.office.reply.TemplateFolder;

/** Ways to bend a claim or a transfer: its day, its cause, the sale. */
class WarrantyMisuseTest extends MisuseCase {
    private static final LocalDate LATER = LocalDate.of(2040, 1, 1);
    private static final String DUTY = "Every fall, clean the gutters and the leaf catch at each downspout.";

    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "a claim before cover",
                        Stage.CLOSED,
                        site -> claim(site, "2026-09-24", Optional.empty()),
                        "2026-09-24, before the warranty begins; allowed: 2026-09-25 or later"),
                new Misuse(
                        "a claim after cover",
                        Stage.CLOSED,
                        site -> claim(site, "2036-09-25", Optional.empty()),
                        "2036-09-25, after the last part ended; allowed: 2036-09-24 or earlier"),
                new Misuse(
                        "a claim on a day that has not come",
                        Stage.CLOSED,
                        site -> claim(site, "2040-01-02", Optional.empty()),
                        "2040-01-02, a day that has not come"),
                new Misuse(
                        "a look before the claim",
                        Stage.CLOSED,
                        site -> denied(site, Optional.of("2027-02-27"), Optional.of("it did")),
                        "2027-02-27, before the claim was made"),
                new Misuse(
                        "a missed duty alone denies",
                        Stage.CLOSED,
                        site -> denied(site, Optional.of("2027-03-04"), Optional.empty()),
                        "--cause: found a missed duty alone"),
                new Misuse(
                        "a transfer without the day of the sale",
                        Stage.CLOSED,
                        site -> passed(site, Optional.empty(), "Anselm Wren"),
                        "--sold: found no day of the sale"),
                new Misuse(
                        "a transfer too late",
                        Stage.CLOSED,
                        site -> passed(site, Optional.of(LocalDate.parse("2029-01-04")), "Anselm Wren"),
                        "151 days after the sale"));
    }

    private static String described(Reply reply) {
        return (reply.done() ? "DONE " : "") + String.join("\n", reply.out()) + String.join("\n", reply.err());
    }

    private static String claim(SampleJobFolder site, String on, Optional<String> since) throws IOException {
        return described(Claims.open(
                site.folder(),
                input(on, Optional.of("water"), since, Optional.empty(), Optional.empty(), Optional.empty()),
                LATER));
    }

    private static ClaimInput input(
            String on,
            Optional<String> seen,
            Optional<String> since,
            Optional<String> inspected,
            Optional<String> clause,
            Optional<String> cause) {
        return new ClaimInput(
                LocalDate.parse(on),
                seen,
                since.map(LocalDate::parse),
                Optional.empty(),
                inspected.map(LocalDate::parse),
                clause.map(text -> "no"),
                clause,
                cause,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static String denied(SampleJobFolder site, Optional<String> inspected, Optional<String> cause)
            throws IOException {
        claim(site, "2027-03-01", Optional.empty());
        return described(Claims.add(
                site.folder(),
                "2026-014-CL1",
                input("2027-03-04", Optional.empty(), Optional.empty(), inspected, Optional.of(DUTY), cause),
                LATER));
    }

    private static String passed(SampleJobFolder site, Optional<LocalDate> sold, String to) throws IOException {
        return described(Transfers.transfer(
                site.folder(),
                new TransferInput(
                        Optional.empty(),
                        List.of(to),
                        LocalDate.parse("2029-06-04"),
                        sold,
                        Optional.empty(),
                        Optional.empty()),
                TemplateFolder.NONE,
                LATER));
    }
}
