// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.List;
import javax.swing.JButton;
import spadework.draft.AsBuiltStart;
import spadework.form.field.BasePointer;
import spadework.form.field.EmptyListCheckBox;
import spadework.form.kit.KeyBindings;
import spadework.form.kit.Messages;
import spadework.form.session.JobSession;

/** The pages beyond the papers: what the homeowner may choose, what was changed on the way, what was built. */
public final class AgreedWorkPages {
    private AgreedWorkPages() {}

    static void options(PageContent page) {
        page.group("options");
        BasePointer options = page.list(BasePointer.JOB.inside("/options"), "/label=2", "/title=6", "/why=8");
        page.field(options, "/why", 12);
        alteration(page, options);
    }

    static void changes(PageContent page) {
        page.group("changes");
        BasePointer change = page.list(
                BasePointer.JOB.inside("/changes"), "/number=2", "/title=7", "/issued=3", "/reason=4", "/days=2");
        page.field(change, "/why", 6);
        page.field(change, "/evidence", 6);
        page.list(change.inside("/unitPrices"), 5, "/price=3", "/quantity=3", "/wall=2");
        page.list(change.inside("/photos"), 7, "/file=3", "/caption=6");
        alteration(page, change);
        page.group("decision");
        page.shown(change, "/state", 2);
        for (String key : List.of("/decision/on", "/decision/by", "/decision/price")) {
            page.shown(change, key, key.endsWith("by") ? 6 : 2);
        }
        for (String key : List.of("/by", "/file", "/typed", "/consent")) {
            page.shown(change, "/decision/signature" + key, 3);
        }
        for (String part : CONSENT) {
            page.shown(change, "/decision/signature/electronic" + part, 2);
        }
        furtherSignatures(page, change.inside("/decision"));
    }

    /** The signature of the second who signed apart; the step writes it, and the job file has those of all. */
    static void furtherSignatures(PageContent page, BasePointer of) {
        for (String key : List.of("/by", "/file", "/typed", "/consent")) {
            page.shown(of, "/furtherSignatures/0" + key, 3);
        }
        for (String part : CONSENT) {
            page.shown(of, "/furtherSignatures/0/electronic" + part, 2);
        }
    }

    /** What is added and taken away, under names of the job's own. */
    private static void alteration(PageContent page, BasePointer of) {
        BasePointer adds = of.inside("/adds");
        page.group("adds.walls");
        JobPages.wall(page, adds.inside("/walls"));
        page.rareGroup("adds.corners");
        page.list(adds.inside("/finishes"), 6, "/wall=2", "/finish/system=3", "/finish/item=3", "/finish/dryFilm=3");
        page.list(adds.inside("/corners"), 6, "/first=3", "/second=3", "/kind=3");
        JobPages.pipes(page, adds);
        page.rareGroup("adds.ground");
        page.list(adds.inside("/items"), "/code=4", "/quantity=3", "/section=4", "/reason=8");
        JobPages.ground(page, adds.inside("/restoration"));
        BasePointer takes = of.inside("/takesAway");
        page.rareGroup("takes");
        for (String labels : List.of("/walls", "/pipes", "/downspouts", "/outlets", "/items")) {
            page.list(takes.inside(labels), 6, "=10");
        }
        page.rareGroup("takes.ground");
        JobPages.ground(page, takes.inside("/restoration"));
    }

    /** The parts of a consent to sign without paper. */
    static final List<String> CONSENT =
            List.of("/given", "/disclosed", "/paper", "/withdrawal", "/equipment", "/access");

    private static JButton beginAsAgreed(JobSession session) {
        JButton begin = new JButton(KeyBindings.action(
                Messages.of("built.begin"), () -> session.edit(AsBuiltStart.begun(session.draft()))));
        begin.setName("built begin");
        begin.setToolTipText(Messages.of("built.begin.help"));
        return begin;
    }

    static void built(PageContent page) {
        page.group("received");
        page.list(BasePointer.JOB.inside("/received"), "/on=3", "/amount=3", "/how=8");
        page.group("built");
        page.own(AgreedWorkPages::beginAsAgreed, "span 4, aligny bottom");
        page.field("/asBuilt/started", 4);
        page.field("/asBuilt/finished", 4);
        page.field("/asBuilt/stone", 4);
        page.field("/asBuilt/loads", 4);
        page.field("/asBuilt/soilFound", 4);
        page.group("built.walls");
        BasePointer walls = page.list(
                BasePointer.JOB.inside("/asBuilt/walls"),
                "/label=2",
                "/length=3",
                "/depthStart=3",
                "/depthEnd=3",
                "/gallons=3",
                "/batches=5",
                "/temperature=6");
        page.list(walls.inside("/holdPoints"), "/point=5", "/on=3", "/by=4", "/photo=4", "/waived=5");
        page.list(walls.inside("/coats"), "/number=2", "/wet=8");
        page.group("built.pipes");
        page.list(
                BasePointer.JOB.inside("/asBuilt/pipes"),
                "/label=2",
                "/length=3",
                "/startInvert=2",
                "/endInvert=2",
                "/teeInvert=2");
        page.list(BasePointer.JOB.inside("/asBuilt/flowTests"), "/line=2", "/on=3", "/passed=2", "/what=8", "/by=4");
        page.list(BasePointer.JOB.inside("/asBuilt/inspections"), "/on=3", "/by=4", "/soil=5", "/hazards=6", "/done=6");
        page.field("/asBuilt/note", 12);
        page.rareGroup("built.actuals");
        page.list(BasePointer.JOB.inside("/asBuilt/actuals"), "/code=4", "/quantity=3", "/hours=3", "/material=3");
    }

    /** What the contract says beyond the work; on the page of the agreement. */
    static void signing(PageContent page) {
        BasePointer signing = BasePointer.JOB.inside("/signing");
        page.group("signing");
        page.field(signing, "/on", 3);
        page.field(signing, "/place", 3);
        page.field(signing, "/salesperson/name", 3);
        page.field(signing, "/salesperson/license", 3);
        page.field(signing, "/salesperson/address", 9);
        page.field(signing, "/oldestAge", 3);
        page.field(signing, "/permits", 12);
        page.list(signing.inside("/subcontractors"), "/name=4", "/trade=3", "/address=6", "/phone=3", "/license=3");
        page.own(session -> new EmptyListCheckBox(session, "/signing/subcontractors"), "span 12");
        page.rareGroup("signing.special");
        page.field(signing, "/specialOrder", 2);
        page.field(signing, "/emergency", 2);
        page.field(signing, "/afterDisaster", 2);
        page.field(signing, "/dateIsEssential", 2);
        page.field(signing, "/lienOnHome", 2);
        page.field(signing, "/financed", 2);
        page.field(signing, "/language", 4);
        page.field(signing, "/received", 4);
        page.field(signing, "/statement", 4);
        page.field(signing, "/depositHeld", 12);
        page.list(signing.inside("/materials"), "=10");
        page.list(signing.inside("/signers"), "/name=4", "/right=4", "/owner=4", "/document=4");
    }
}
