// SPDX-License-Identifier: Apache-2.0
package spadework.intake.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import spadework.company.Company;
import spadework.intake.check.JobChecks;
import spadework.intake.company.TermsReader;
import spadework.intake.company.WorkCalendarReader;
import spadework.intake.source.ObjectFields;
import spadework.intake.source.SourceNode;
import spadework.intake.source.Texts;
import spadework.intake.source.ValueKind;
import spadework.intake.value.Addresses;
import spadework.intake.value.CalendarDates;
import spadework.intake.value.Choices;
import spadework.intake.value.Codes;
import spadework.intake.value.Counts;
import spadework.intake.value.Languages;
import spadework.intake.value.Measures;
import spadework.intake.value.Names;
import spadework.job.AcceptedStop;
import spadework.job.ContractTerms;
import spadework.job.Corner;
import spadework.job.CornerKind;
import spadework.job.Customer;
import spadework.job.Job;
import spadework.job.JobHead;
import spadework.job.JobPricing;
import spadework.job.Observation;
import spadework.job.Photo;
import spadework.job.Restoration;
import spadework.job.Schedule;
import spadework.job.Survey;
import spadework.job.Waits;
import spadework.job.WallEnd;
import spadework.job.WarrantyTerms;
import spadework.job.Work;
import spadework.measure.Area;
import spadework.measure.Length;
import spadework.spelling.FormerSpelling;
import spadework.wording.Language;

/** Reads job.json; what a job leaves open is the company's. */
public final class JobReader {
    private static final Area NO_AREA = Area.ofSquareFeet(0);
    private static final Length TOPSOIL_DEPTH = Length.ofInches(4);
    private static final Restoration NO_RESTORATION =
            new Restoration(Length.ZERO, NO_AREA, TOPSOIL_DEPTH, NO_AREA, NO_AREA, NO_AREA, 0);
    private static final WarrantyTerms NO_WARRANTY =
            new WarrantyTerms(List.of(), 1, 1, 1, 1, 0, 0, List.of(), List.of());

    static final ValueKind<Photo> PHOTO = ValueKind.object(JobReader::photo);
    static final ValueKind<Corner> CORNER = ValueKind.object(JobReader::corner);
    static final ValueKind<Restoration> RESTORATION = ValueKind.object(JobReader::restoration);

    private final Optional<Company> company;
    private final Codes codes;

    public JobReader(Company company, Codes codes) {
        this.company = Optional.of(company);
        this.codes = codes;
    }

    /** Makes a reader without a company, because that has faults: its share is left empty. */
    public JobReader(Codes codes) {
        this.company = Optional.empty();
        this.codes = codes;
    }

    /** Reads the job and then checks what has to fit together. */
    public Job read(SourceNode root) {
        Job job = ValueKind.object(this::job).read(root);
        JobChecks.all(job, root.sheet());
        return job;
    }

    private Job job(ObjectFields fields) {
        fields.find("$schema", Texts.TEXT);
        JobFormat.read(fields);
        ExtraItemReader extras = new ExtraItemReader(codes);
        return new Job(
                new JobHead(
                        fields.get("number", Texts.LABEL),
                        fields.get("title", Texts.LABEL),
                        fields.get("issued", CalendarDates.DATE),
                        fields.get(
                                "validDays",
                                TermsReader.VALID_DAYS,
                                company.map(Company::validDays).orElse(1)),
                        fields.get("language", Languages.CODE, Language.ENGLISH)),
                fields.get("customer", ValueKind.object(JobReader::customer)),
                fields.get("site", SiteReader.SITE),
                new Survey(
                        fields.list("observations", ValueKind.object(JobReader::observation)),
                        fields.list("notFixed", Texts.TEXT),
                        fields.list("photos", PHOTO)),
                new Work(
                        fields.list("walls", new WallReader(codes).kind()),
                        fields.list("corners", CORNER),
                        fields.get("water", new WaterReader(codes).kind(), WaterReader.NONE),
                        fields.get("restoration", RESTORATION, NO_RESTORATION),
                        fields.list("protection", Texts.TEXT),
                        fields.get("schedule", ValueKind.object(JobReader::schedule))),
                new JobPricing(
                        fields.list("items", extras.item()),
                        fields.list("priceChanges", extras.priceChange()),
                        fields.find("taxClass", taxClasses().kind())),
                new ContractTerms(
                        fields.list("excluded", Texts.TEXT),
                        fields.list("assumed", Texts.TEXT),
                        fields.get(
                                "payments",
                                TermsReader.PAYMENTS,
                                company.map(Company::payments).orElse(List.of())),
                        fields.get(
                                "warranty",
                                TermsReader.WARRANTY,
                                company.map(Company::warranty).orElse(NO_WARRANTY)),
                        fields.list("terms", Texts.TEXT)),
                fields.list("acceptedStops", ValueKind.object(JobReader::acceptedStop)),
                new AgreementReader(codes).read(fields),
                fields.list("notes", Texts.TEXT));
    }

    private Names taxClasses() {
        String what = "a class of \"tax\" in company.json";
        return company.map(known -> Names.of(what, known.tax().classes().keySet()))
                .orElse(Names.unknown(what));
    }

    private static Customer customer(ObjectFields fields) {
        return new Customer(
                fields.filled("names", Texts.LABEL),
                fields.find("mailing", Addresses.ADDRESS),
                fields.find("phone", Texts.LABEL),
                fields.find("email", Texts.LABEL));
    }

    private static Observation observation(ObjectFields fields) {
        return new Observation(
                fields.get("seen", Texts.TEXT),
                fields.get("evidence", Texts.TEXT),
                fields.get("cause", Texts.TEXT),
                fields.get("cure", Texts.TEXT),
                fields.list("photos", Texts.FILE));
    }

    private static Photo photo(ObjectFields fields) {
        return new Photo(fields.get("file", Texts.FILE), fields.get("caption", Texts.TEXT));
    }

    private static Corner corner(ObjectFields fields) {
        ValueKind<WallEnd> end = new ValueKind<>("\"A end\"", JobReader::wallEnd);
        ValueKind<CornerKind> kind = Choices.of(CornerKind.class);
        return new Corner(fields.get("first", end), fields.get("second", end), fields.get("kind", kind));
    }

    private static WallEnd wallEnd(SourceNode node) {
        String text = Texts.LABEL.read(node).strip();
        int space = text.lastIndexOf(' ');
        String end = text.substring(space + 1);
        if (!node.isSilent() && (space < 1 || (!end.equals("start") && !end.equals("end")))) {
            node.fault(node.written(), "a wall's label, then start or end", "write it as \"A end\"");
        }
        return new WallEnd(text.substring(0, Math.max(space, 0)).strip(), end.equals("end"));
    }

    private static Restoration restoration(ObjectFields fields) {
        ValueKind<Area> area = Measures.areaFromZeroTo(1_000_000);
        return new Restoration(
                fields.get("regrade", Measures.lengthFromZeroTo(4000), Length.ZERO),
                fields.get("topsoil", area, NO_AREA),
                fields.get("topsoilDepth", Measures.lengthFromZeroTo(2), TOPSOIL_DEPTH),
                fields.get("seed", area, NO_AREA),
                fields.get("sod", area, NO_AREA),
                fields.get("concrete", area, NO_AREA),
                fields.get("plants", Counts.between(0, 10_000), 0));
    }

    private static Schedule schedule(ObjectFields fields) {
        return new Schedule(
                fields.get("earliestStart", CalendarDates.DATE),
                fields.get("latestFinish", CalendarDates.DATE),
                fields.get("workingDays", Counts.between(1, 365)),
                fields.get("note", Texts.TEXT, ""),
                fields.find("crews", WorkCalendarReader.CREWS),
                fields.get("overtime", WorkCalendarReader.OVERTIME, BigDecimal.ZERO),
                fields.get("waits", WorkCalendarReader.WAITS, Waits.NONE));
    }

    private static AcceptedStop acceptedStop(ObjectFields fields) {
        return new AcceptedStop(
                FormerSpelling.current(fields.get("finding", Texts.LABEL)),
                fields.get("about", Texts.LABEL, ""),
                fields.get("by", Texts.LABEL),
                fields.get("why", Texts.TEXT),
                fields.get("on", CalendarDates.DATE));
    }
}
