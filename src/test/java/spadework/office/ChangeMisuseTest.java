// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.stream.Stream;
import spadework.office.MisuseStages.Stage;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.SignatureInput;

/** Ways to bend a change order: its day, who signs it, its price, its place among the others. */
class ChangeMisuseTest extends MisuseCase {
    static Stream<Misuse> misuses() {
        return Stream.of(
                new Misuse(
                        "a later change order before an earlier one",
                        Stage.SIGNED,
                        site -> {
                            site.addChange(1);
                            site.addChange(2);
                            return described(decide(site, 2, true, SampleJobFolder.on("2026-09-13")));
                        },
                        "Change order 1 is still open, and what change order 2 says of the price and the last day is"
                                + " counted from it"),
                new Misuse(
                        "a later change order signed on an earlier day",
                        Stage.CHANGED,
                        site -> described(decide(site, 2, true, SampleJobFolder.on("2026-09-12"))),
                        "Change order 1 was signed on 2026-09-13, after 2026-09-12"),
                new Misuse(
                        "the clock set back",
                        Stage.CHANGED,
                        site -> described(new Deciding(OFFICE, LocalDate.parse("2026-09-01"))
                                .decide(site.folder(), 2, true, SampleJobFolder.on("2026-09-13"))),
                        "It cannot have been signed on 2026-09-13: today is 2026-09-01"),
                new Misuse(
                        "a change order that does not exist",
                        Stage.CHANGED,
                        site -> described(decide(site, 7, true, SampleJobFolder.on("2026-09-13"))),
                        "There is no change order 7"),
                new Misuse(
                        "a change order signed before it was there",
                        Stage.CHANGED,
                        site -> described(decide(site, 2, true, SampleJobFolder.on("2026-09-11"))),
                        "Change order 2 was issued on 2026-09-12, after 2026-09-11"),
                new Misuse(
                        "a change order declined tomorrow",
                        Stage.CHANGED,
                        site -> described(decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-11-21")))),
                        "It cannot have been declined on 2026-11-21"),
                new Misuse(
                        "a stranger signs a change order",
                        Stage.CHANGED,
                        site -> described(decide(site, 2, true, SampleJobFolder.by("2026-09-13", "Uncle Osric"))),
                        "It is signed by Ida Wrenfield, Tobias Wrenfield. Correct the name, or write \"signing\","
                                + " \"signers\""),
                new Misuse(
                        "the price of a change order raised in the file",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> at(job, "/changes/0/decision").put("price", "$9,999.00"));
                            return kept(site);
                        },
                        "sealed-change: The job file says that change order 1 was signed at $9,999.00. The "
                                + "register has $"),
                new Misuse(
                        "a change order accepted in the file alone",
                        Stage.CHANGED,
                        site -> {
                            site.edit(ChangeMisuseTest::acceptInTheFileAlone);
                            return kept(site);
                        },
                        "change-unregistered: The job file says that change order 2 is accepted"),
                new Misuse(
                        "a change order accepted in the file alone, and answered for",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> {
                                acceptInTheFileAlone(job);
                                job.set("acceptedStops", SampleJobFolder.json("""
                                        [{"finding": "change-unregistered", "about": "2", "by": "Odo",
                                          "on": "2026-09-20", "why": "said on the phone"}]
                                        """));
                            });
                            return kept(site);
                        },
                        "change-unregistered: The job file says that change order 2 is accepted"),
                new Misuse(
                        "an accepted change order declined",
                        Stage.CHANGED,
                        site -> described(decide(site, 1, false, SignatureInput.none(LocalDate.parse("2026-09-13")))),
                        "what was decided is \"accepted\" there, and \"declined\" was asked for"),
                new Misuse(
                        "a declined change order accepted",
                        Stage.BUILT,
                        site -> described(decide(site, 2, true, SampleJobFolder.on("2026-09-14"))),
                        "what was decided is \"declined\" there, and \"accepted\" was asked for"));
    }

    /** Says of the second change order what was decided of the first. */
    private static void acceptInTheFileAlone(ObjectNode job) {
        ObjectNode second = at(job, "/changes/1");
        second.put("state", "accepted");
        second.set("decision", job.at("/changes/0/decision"));
    }
}
