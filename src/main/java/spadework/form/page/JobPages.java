// SPDX-License-Identifier: Apache-2.0
package spadework.form.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import spadework.form.field.BasePointer;

/** The pages in the order of the visit. */
final class JobPages {
    /** What the pages have that are fields and lists alone. */
    static final Map<JobPage, Consumer<PageContent>> CONTENTS = contents();

    private JobPages() {}

    private static Map<JobPage, Consumer<PageContent>> contents() {
        Map<JobPage, Consumer<PageContent>> contents = new EnumMap<>(JobPage.class);
        contents.put(JobPage.PEOPLE, JobPages::people);
        contents.put(JobPage.WALLS, JobPages::walls);
        contents.put(JobPage.WATER, JobPages::water);
        contents.put(JobPage.RESTORATION, JobPages::restoration);
        contents.put(JobPage.TERMS, JobPages::terms);
        contents.put(JobPage.OPTIONS, AgreedWorkPages::options);
        contents.put(JobPage.CHANGES, AgreedWorkPages::changes);
        contents.put(JobPage.BUILT, AgreedWorkPages::built);
        return contents;
    }

    static void people(PageContent page) {
        visit(page);
        photos(page);
        mailing(page);
    }

    static void visit(PageContent page) {
        page.group("job");
        page.field("/number", 2);
        page.field("/title", 6);
        page.field("/issued", 2);
        page.field("/validDays", 2);
        page.group("customer");
        page.list(BasePointer.JOB.inside("/customer/names"), 6, "=10");
        page.field("/customer/phone", 3);
        page.field("/customer/email", 3);
        page.field("/language", 2);
        page.group("place");
        address(page, BasePointer.JOB.inside("/site/address"));
        page.field("/site/space", 2);
        page.field("/site/yearBuilt", 2);
        page.field("/site/house/eastWest", 2);
        page.field("/site/house/northSouth", 2);
        page.field("/site/insideFloor", 2);
        page.field("/site/locateTicket", 2);
        page.field("/site/locateUntil", 2);
        page.field("/site/house/front", 2);
        page.field("/site/house/door", 2);
        page.field("/site/house/wayIn/by", 3);
        page.field("/site/house/wayIn/door", 5);
        page.field("/site/benchmark", 8);
        page.group("ground");
        page.field("/site/soil/texture", 3);
        page.field("/site/soil/seepage", 3);
        page.field("/site/soil/type", 3);
        page.field("/site/rain/intensity", 3);
        page.field("/site/rain/source", 12);
        page.list(BasePointer.JOB.inside("/site/limits"), "/kind=4", "/wall=2", "/distance=3", "/trunk=3", "/note=6");
        page.list(BasePointer.JOB.inside("/site/testPits"), "/label=2", "/wall=2", "/length=3", "/width=3", "/depth=3");
        page.group("seen");
        BasePointer seen = page.list(BasePointer.JOB.inside("/observations"), "/seen=6", "/cause=6", "/photos=4");
        page.field(seen, "/seen", 6);
        page.field(seen, "/evidence", 6);
        page.field(seen, "/cause", 6);
        page.field(seen, "/cure", 6);
        page.field(seen, "/photos", 12);
        page.list(BasePointer.JOB.inside("/notFixed"), "=10");
    }

    static void photos(PageContent page) {
        page.group("photos");
        page.list(BasePointer.JOB.inside("/photos"), "/file=3", "/caption=8");
    }

    static void mailing(PageContent page) {
        page.rareGroup("mailing");
        address(page, BasePointer.JOB.inside("/customer/mailing"));
    }

    private static void address(PageContent page, BasePointer base) {
        page.field(base, "/street", 5);
        page.field(base, "/city", 3);
        page.field(base, "/state", 2);
        page.field(base, "/zip", 2);
    }

    static void walls(PageContent page) {
        page.group("walls");
        wall(page, BasePointer.JOB.inside("/walls"));
        page.group("corners");
        page.list(BasePointer.JOB.inside("/corners"), 8, "/first=3", "/second=3", "/kind=3");
    }

    static void wall(PageContent page, BasePointer list) {
        BasePointer wall = page.list(
                list,
                "/label=2",
                "/where=6",
                "/faces=3",
                "/from=3",
                "/length=3",
                "/depth/start=4",
                "/depth/end=4",
                "/kind=3");
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
        page.group("digging");
        page.field(wall, "/digging/access", 3);
        page.field(wall, "/digging/handShare", 3);
        page.field(wall, "/digging/bottomWidth", 3);
        page.field(wall, "/digging/protection", 3);
        page.field(wall, "/digging/ends/start", 3);
        page.field(wall, "/digging/ends/end", 3);
        page.field(wall, "/digging/ends/rampRun", 3);
        page.group("openings");
        page.field(wall, "/windowWells", 2);
        page.list(wall.inside("/openings"), 10, "/what=5", "/count=2", "/width=3", "/height=3");
    }

    static void water(PageContent page) {
        pipes(page, BasePointer.JOB.inside("/water"));
        page.rareGroup("uphill");
        page.field("/site/catchment/area", 3);
        page.field("/site/catchment/runoff", 3);
        page.field("/site/catchment/into", 3);
        page.field("/site/catchment/note", 12);
        page.rareGroup("candidates");
        page.list(
                BasePointer.JOB.inside("/water/candidates"),
                "/label=2",
                "/what=6",
                "/distance=3",
                "/level=3",
                "/permission=5",
                "/note=5");
    }

    static void pipes(PageContent page, BasePointer water) {
        page.group("drains");
        page.list(
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
            page.list(
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
                    "/besideWall/wall=3",
                    "/besideWall/length=3",
                    "/item=4");
        }
        page.list(water.inside("/downspouts"), 6, "/label=3", "/roof=4", "/into=3", "/place/side=3", "/place/from=3");
        page.group("outlets");
        BasePointer outlets = page.list(
                water.inside("/outlets"),
                "/label=3",
                "/kind=4",
                "/what=8",
                "/level=4",
                "/waterLevel=4",
                "/fromHouse=4",
                "/fromLotLine=4");
        page.field(outlets, "/permission", 8);
        page.field(outlets, "/discharge", 4);
        page.field(outlets, "/dischargeTrench/width", 3);
        page.field(outlets, "/dischargeTrench/depth", 3);
        page.field(outlets, "/dischargeTrench/protection", 3);
        page.rareGroup("pit");
        page.field(outlets, "/pit/diameter", 2);
        page.field(outlets, "/pit/depth", 2);
        page.field(outlets, "/pit/lift", 2);
        page.field(outlets, "/pit/pumpFlow", 3);
        page.field(outlets, "/pit/pumpHead", 3);
        page.field(outlets, "/pit/place", 3);
        page.field(outlets, "/pit/fromFooting", 3);
        page.field(outlets, "/pit/observedInflow", 3);
    }

    static void restoration(PageContent page) {
        page.group("ground.back");
        ground(page, BasePointer.JOB.inside("/restoration"));
        page.group("protection");
        page.list(BasePointer.JOB.inside("/protection"), "=10");
    }

    static void ground(PageContent page, BasePointer restoration) {
        for (String key : List.of("/regrade", "/topsoil", "/topsoilDepth", "/seed", "/sod", "/concrete", "/plants")) {
            page.field(restoration, key, 3);
        }
    }

    static void terms(PageContent page) {
        page.group("schedule");
        page.field("/schedule/earliestStart", 4);
        page.field("/schedule/latestFinish", 4);
        page.field("/schedule/workingDays", 4);
        page.field("/schedule/note", 12);
        page.field("/schedule/crews", 4);
        page.field("/schedule/overtime", 4);
        for (String wait : List.of("locate", "engineer", "wallDry", "coatingCure", "inspection")) {
            page.field("/schedule/waits/" + wait, 4);
        }
        page.group("words");
        page.list(BasePointer.JOB.inside("/excluded"), 6, "=10");
        page.list(BasePointer.JOB.inside("/assumed"), 6, "=10");
        page.list(BasePointer.JOB.inside("/terms"), 6, "=10");
        page.list(BasePointer.JOB.inside("/notes"), 6, "=10");
        page.rareGroup("payments");
        page.list(BasePointer.JOB.inside("/payments"), "/when=9", "/share=3", "/atSigning=3", "/workDone=3");
        page.field("/taxClass", 4);
        page.rareGroup("warranty");
        page.list(BasePointer.JOB.inside("/warranty/parts"), "/part=4", "/promise=9", "/years=2");
        page.field("/warranty/replyDays", 3);
        page.field("/warranty/visitDays", 3);
        page.field("/warranty/findingDays", 3);
        page.field("/warranty/beginDays", 3);
        page.field("/warranty/transfers", 4);
        page.field("/warranty/transferNoticeDays", 4);
        page.list(BasePointer.JOB.inside("/warranty/notCovered"), 6, "=10");
        page.list(BasePointer.JOB.inside("/warranty/duties"), 6, "=10");
        page.rareGroup("stops");
        page.list(BasePointer.JOB.inside("/acceptedStops"), "/finding=4", "/about=2", "/by=4", "/why=6", "/on=3");
    }
}
