// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.stream.Stream;
import spadework.office.CheatStages.Stage;
import spadework.office.agreement.Deciding;
import spadework.office.agreement.SignatureInput;

/** Ways to bend a change order: its day, who signs it, its price, its place among the others. */
class ChangeCheatsTest extends CheatCase {
    static Stream<Cheat> cheats() {
        return Stream.of(
                new Cheat(
                        "a later change order before an earlier one",
                        Stage.SIGNED,
                        site -> {
                            site.addChange(1);
                            site.addChange(2);
                            return told(decide(site, 2, true, Jobsite.on("2026-09-13")));
                        },
                        "Change order 1 is still open, and what change order 2 says of the price and the last day is"
                                + " counted from it"),
                new Cheat(
                        "a later change order signed on an earlier day",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, true, Jobsite.on("2026-09-12"))),
                        "Change order 1 was signed on 2026-09-13, after 2026-09-12"),
                new Cheat(
                        "the clock set back",
                        Stage.CHANGED,
                        site -> told(new Deciding(OFFICE, LocalDate.parse("2026-09-01"))
                                .decide(site.folder(), 2, true, Jobsite.on("2026-09-13"))),
                        "It cannot have been signed on 2026-09-13: today is 2026-09-01"),
                new Cheat(
                        "a change order that does not exist",
                        Stage.CHANGED,
                        site -> told(decide(site, 7, true, Jobsite.on("2026-09-13"))),
                        "There is no change order 7"),
                new Cheat(
                        "a change order signed before it was there",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, true, Jobsite.on("2026-09-11"))),
                        "Change order 2 was issued on 2026-09-12, after 2026-09-11"),
                new Cheat(
                        "a change order declined tomorrow",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, false, SignatureInput.none(LocalDate.parse("2026-11-21")))),
                        "It cannot have been declined on 2026-11-21"),
                new Cheat(
                        "a stranger signs a change order",
                        Stage.CHANGED,
                        site -> told(decide(site, 2, true, Jobsite.by("2026-09-13", "Uncle Osric"))),
                        "It is signed by Ida Wrenfield, Tobias Wrenfield. Correct the name, or write \"signing\","
                                + " \"signers\""),
                new Cheat(
                        "the price of a change order raised in the file",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> at(job, "/changes/0/decision").put("price", "$9,999.00"));
                            return kept(site);
                        },
                        "sealed-change: The job file says that change order 1 was signed at $9,999.00. The "
                                + "register has $"),
                new Cheat(
                        "a change order accepted in the file alone",
                        Stage.CHANGED,
                        site -> {
                            site.edit(job -> {
                                ObjectNode second = at(job, "/changes/1");
                                second.put("state", "accepted");
                                second.set("decision", job.at("/changes/0/decision"));
                            });
                            return kept(site);
                        },
                        "change-unregistered: The job file says that change order 2 is accepted"),
                new Cheat(
                        "an accepted change order declined",
                        Stage.CHANGED,
                        site -> told(decide(site, 1, false, SignatureInput.none(LocalDate.parse("2026-09-13")))),
                        "what was decided is \"accepted\" there, and \"declined\" was asked for"),
                new Cheat(
                        "a declined change order accepted",
                        Stage.BUILT,
                        site -> told(decide(site, 2, true, Jobsite.on("2026-09-14"))),
                        "what was decided is \"declined\" there, and \"accepted\" was asked for"));
    }
}
