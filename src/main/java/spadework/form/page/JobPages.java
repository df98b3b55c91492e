// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import spadework.form.field.BasePointer;
import spadework.form.field.RowsTable;
import spadework.form.session.JobSession;

/** The pages in the order of the visit. */
public final class JobPages {
    private JobPages() {}

    /** The pages that are fields and lists alone. */
    public static Map<JobPage, FormPage> of(JobSession session) {
        Map<JobPage, FormPage> pages = new EnumMap<>(JobPage.class);
        pages.put(JobPage.PEOPLE, people(session));
        pages.put(JobPage.WALLS, walls(session));
        pages.put(JobPage.WATER, water(session));
        pages.put(JobPage.RESTORATION, restoration(session));
        pages.put(JobPage.TERMS, terms(session));
        pages.put(JobPage.OPTIONS, AgreedWorkPages.options(session));
        pages.put(JobPage.CHANGES, AgreedWorkPages.changes(session));
        pages.put(JobPage.BUILT, AgreedWorkPages.built(session));
        return pages;
    }

    /** What is part of what both sides sign says so once they did. */
    public static void freeze(Map<JobPage, FormPage> pages) {
        pages.forEach((page, shown) -> {
            if (page.stop() == JobStop.VISIT || page.stop() == JobStop.PRICE) {
                shown.readOnlyOnceSigned();
            }
        });
    }

    static FormPage people(JobSession session) {
        FormPage page = new FormPage(session, "people");
        page.group("job");
        page.field("/number", 2);
        page.field("/title", 6);
        page.field("/issued", 2);
        page.field("/validDays", 2);
        page.group("customer");
        page.table(BasePointer.JOB.inside("/customer/names"), 6, "=10");
        page.field("/customer/phone", 3);
        page.field("/customer/email", 3);
        page.group("place");
        address(page, BasePointer.JOB.inside("/site/address"));
        page.field("/site/space", 2);
        page.field("/site/yearBuilt", 2);
        page.field("/site/house/eastWest", 2);
        page.field("/site/house/northSouth", 2);
        page.field("/site/insideFloor", 2);
        page.field("/site/locateTicket", 2);
        page.field("/site/house/front", 2);
        page.field("/site/house/door", 2);
        page.field("/site/benchmark", 8);
        page.group("ground");
        page.field("/site/soil/texture", 3);
        page.field("/site/soil/seepage", 3);
        page.field("/site/soil/type", 3);
        page.field("/site/rain/intensity", 3);
        page.field("/site/rain/source", 12);
        page.table(BasePointer.JOB.inside("/site/limits"), "/kind=4", "/wall=2", "/distance=3", "/trunk=3", "/note=6");
        page.table(
                BasePointer.JOB.inside("/site/testPits"), "/label=2", "/wall=2", "/length=3", "/width=3", "/depth=3");
        page.group("seen");
        RowsTable seen = page.table(BasePointer.JOB.inside("/observations"), "/seen=6", "/cause=6", "/photos=4");
        page.field(seen.row(), "/seen", 6);
        page.field(seen.row(), "/evidence", 6);
        page.field(seen.row(), "/cause", 6);
        page.field(seen.row(), "/cure", 6);
        page.field(seen.row(), "/photos", 12);
        page.table(BasePointer.JOB.inside("/notFixed"), "=10");
        page.table(BasePointer.JOB.inside("/photos"), "/file=3", "/caption=8");
        page.group("mailing");
        address(page, BasePointer.JOB.inside("/customer/mailing"));
        return page;
    }

    private static void address(FormPage page, BasePointer base) {
        page.field(base, "/street", 5);
        page.field(base, "/city", 3);
        page.field(base, "/state", 2);
        page.field(base, "/zip", 2);
    }

    static FormPage walls(JobSession session) {
        FormPage page = new FormPage(session, "walls");
        page.group("walls");
        wall(page, BasePointer.JOB.inside("/walls"));
        page.group("corners");
        page.table(BasePointer.JOB.inside("/corners"), 8, "/first=3", "/second=3", "/kind=3");
        return page;
    }

    static void wall(FormPage page, BasePointer list) {
        RowsTable walls = page.table(
                list,
                "/label=2",
                "/where=6",
                "/faces=3",
                "/from=3",
                "/length=3",
                "/depth/start=4",
                "/depth/end=4",
                "/kind=3");
        BasePointer wall = walls.row();
        page.group("condition");
        page.field(wall, "/condition/surface", 2);
        page.field(wall, "/condition/cracks", 2);
        page.field(wall, "/condition/bow", 2);
        page.field(wall, "/condition/horizontalCrack", 3);
        page.field(wall, "/condition/displaced", 3);
        page.field(wall, "/condition/footingUndermined", 3);
        page.field(wall, "/condition/tiedToFloor", 3);
        page.field(wall, "/footing/thickness", 3);
        page.field(wall, "/footing/projection", 3);
        page.group("work");
        page.field(wall, "/strip", 3);
        page.field(wall, "/finish/system", 3);
        page.field(wall, "/finish/item", 3);
        page.field(wall, "/finish/dryFilm", 3);
        page.field(wall, "/digging/access", 3);
        page.field(wall, "/digging/handShare", 3);
        page.field(wall, "/digging/bottomWidth", 3);
        page.field(wall, "/digging/protection", 3);
        page.field(wall, "/digging/ends/start", 3);
        page.field(wall, "/digging/ends/end", 3);
        page.field(wall, "/digging/ends/rampRun", 3);
        page.group("openings");
        page.field(wall, "/windowWells", 2);
        page.table(wall.inside("/openings"), 10, "/what=5", "/count=2", "/width=3", "/height=3");
    }

    static FormPage water(JobSession session) {
        FormPage page = new FormPage(session, "water");
        pipes(page, BasePointer.JOB.inside("/water"));
        page.group("uphill");
        page.field("/site/catchment/area", 3);
        page.field("/site/catchment/runoff", 3);
        page.field("/site/catchment/into", 3);
        page.field("/site/catchment/note", 12);
        page.group("candidates");
        page.table(
                BasePointer.JOB.inside("/water/candidates"),
                "/label=2",
                "/what=6",
                "/distance=3",
                "/level=3",
                "/permission=5",
                "/note=5");
        return page;
    }

    static void pipes(FormPage page, BasePointer water) {
        page.group("drains");
        page.table(
                water.inside("/drains"),
                "/label=3",
                "/along=3",
                "/teeAt=3",
                "/into=3",
                "/startInvert=4",
                "/endInvert=4",
                "/teeInvert=4",
                "/startGrade=4",
                "/endGrade=4",
                "/item=4");
        page.group("runs");
        for (String runs : List.of("/mains", "/roofLines")) {
            page.table(
                    water.inside(runs),
                    "/label=3",
                    "/length=3",
                    "/trench/width=3",
                    "/trench/depth=3",
                    "/trench/protection=3",
                    "/bends=3",
                    "/into=3",
                    "/startInvert=4",
                    "/endInvert=4",
                    "/startGrade=4",
                    "/endGrade=4",
                    "/item=4");
        }
        page.table(water.inside("/downspouts"), 6, "/label=3", "/roof=4", "/into=3");
        page.group("outlets");
        RowsTable outlets = page.table(
                water.inside("/outlets"),
                "/label=3",
                "/kind=4",
                "/what=8",
                "/level=4",
                "/waterLevel=4",
                "/fromHouse=4",
                "/fromLotLine=4");
        page.field(outlets.row(), "/permission", 8);
        page.field(outlets.row(), "/discharge", 4);
        page.field(outlets.row(), "/dischargeTrench/width", 3);
        page.field(outlets.row(), "/dischargeTrench/depth", 3);
        page.field(outlets.row(), "/dischargeTrench/protection", 3);
        page.group("pit");
        page.field(outlets.row(), "/pit/diameter", 2);
        page.field(outlets.row(), "/pit/depth", 2);
        page.field(outlets.row(), "/pit/lift", 2);
        page.field(outlets.row(), "/pit/pumpFlow", 3);
        page.field(outlets.row(), "/pit/pumpHead", 3);
        page.field(outlets.row(), "/pit/place", 3);
        page.field(outlets.row(), "/pit/fromFooting", 3);
        page.field(outlets.row(), "/pit/observedInflow", 3);
    }

    static FormPage restoration(JobSession session) {
        FormPage page = new FormPage(session, "restoration");
        page.group("ground.back");
        ground(page, BasePointer.JOB.inside("/restoration"));
        page.group("protection");
        page.table(BasePointer.JOB.inside("/protection"), "=10");
        return page;
    }

    static void ground(FormPage page, BasePointer restoration) {
        for (String key : List.of("/regrade", "/topsoil", "/topsoilDepth", "/seed", "/sod", "/concrete", "/plants")) {
            page.field(restoration, key, 3);
        }
    }

    static FormPage terms(JobSession session) {
        FormPage page = new FormPage(session, "terms");
        page.group("schedule");
        page.field("/schedule/earliestStart", 4);
        page.field("/schedule/latestFinish", 4);
        page.field("/schedule/workingDays", 4);
        page.field("/schedule/note", 12);
        page.field("/schedule/crews", 4);
        page.field("/schedule/overtime", 4);
        for (String wait : List.of("locate", "engineer", "coatingCure", "inspection")) {
            page.field("/schedule/waits/" + wait, 4);
        }
        page.group("words");
        page.table(BasePointer.JOB.inside("/excluded"), 6, "=10");
        page.table(BasePointer.JOB.inside("/assumed"), 6, "=10");
        page.table(BasePointer.JOB.inside("/terms"), 6, "=10");
        page.table(BasePointer.JOB.inside("/notes"), 6, "=10");
        page.group("payments");
        page.table(BasePointer.JOB.inside("/payments"), "/when=9", "/share=3", "/atSigning=3", "/workDone=3");
        page.field("/taxClass", 4);
        page.group("warranty");
        page.table(BasePointer.JOB.inside("/warranty/parts"), "/part=4", "/promise=9", "/years=2");
        page.field("/warranty/replyDays", 3);
        page.field("/warranty/visitDays", 3);
        page.field("/warranty/findingDays", 3);
        page.field("/warranty/beginDays", 3);
        page.field("/warranty/transfers", 4);
        page.field("/warranty/transferNoticeDays", 4);
        page.table(BasePointer.JOB.inside("/warranty/notCovered"), 6, "=10");
        page.table(BasePointer.JOB.inside("/warranty/duties"), 6, "=10");
        page.group("stops");
        page.table(BasePointer.JOB.inside("/acceptedStops"), "/finding=4", "/about=2", "/by=4", "/why=6", "/on=3");
        return page;
    }
}
