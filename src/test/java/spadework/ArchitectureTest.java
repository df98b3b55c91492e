// SPDX-License-Identifier: Apache-2.0
package spadework;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The package map of DEVELOPERS.md, enforced. A package imports itself and what its row names. */
class ArchitectureTest {

    private static final String ROOT = "spadework";

    /** Ordered: a row may name only rows above it, so there can be no cycle. */
    private static final String IMPORTS = """
      measure              |
      money                | measure
      finding              |
      spelling             |
      reason               |
      wording              |
      disk                 |
      picture              |
      working              | measure
      job                  | measure money wording
      company              | measure money wording job
      pricebook            | measure money wording job company
      law.release          |
      law.phrase           |
      law                  | money finding wording law.release law.phrase
      warranty             | money finding
      register             | finding spelling reason wording disk warranty
      draft                | measure spelling
      store                | reason wording register draft
      store.folder         | disk register store
      store.postgres       | register draft store
      trench               | measure working job
      water.flow           | measure working
      water                | measure working job pricebook water.flow
      ground               | measure working job pricebook trench water
      takeoff.wall         | measure working job pricebook trench ground
      takeoff              | measure working job company pricebook trench water ground takeoff.wall
      schedule             | measure finding working job company pricebook law trench takeoff
      place                | measure wording job takeoff
      safety.way           | measure finding job trench ground place
      safety.level         | measure finding job pricebook water ground
      safety               | measure finding working job pricebook trench water.flow water ground takeoff.wall takeoff safety.way safety.level
      pricing              | measure money working job company pricebook takeoff schedule
      figure               | measure money finding working job pricebook law trench water.flow water takeoff.wall takeoff safety pricing
      contract             | measure money job company pricebook takeoff schedule pricing
      closeout             | measure money finding working job pricebook takeoff.wall takeoff contract
      billing              | measure money finding job law law.release pricing contract
      buying               | money pricebook takeoff schedule
      bids                 | measure money job company pricebook takeoff pricing contract
      whatif               | measure money finding working job company pricebook trench takeoff schedule pricing
      feedback             | measure money job company pricebook takeoff pricing
      season               | money bids feedback
      drawing.shape        | job
      drawing.section      | measure wording working job trench ground takeoff drawing.shape
      drawing.plan         | measure wording job trench ground takeoff place drawing.shape
      drawing.profile      | measure wording drawing.shape
      paperwork            | finding wording job company pricebook law takeoff schedule contract
      paperwork.part       | measure money finding job company pricebook law takeoff.wall takeoff pricing paperwork
      paperwork.work       | measure working job pricebook trench water.flow water ground takeoff.wall takeoff contract drawing.shape drawing.section drawing.profile paperwork
      paperwork.letter     | job company paperwork paperwork.part
      paperwork.proposal   | measure money finding job company pricebook law takeoff schedule pricing contract drawing.shape paperwork paperwork.part paperwork.work
      paperwork.scope      | measure finding job pricebook trench water ground takeoff.wall takeoff schedule safety.way safety drawing.shape paperwork paperwork.part paperwork.work
      paperwork.contract   | measure money finding wording job company pricebook law schedule safety pricing contract drawing.shape drawing.plan paperwork paperwork.part paperwork.work
      paperwork.completion | measure money working job pricebook takeoff contract closeout drawing.shape drawing.plan paperwork paperwork.part paperwork.work
      paperwork.warranty   | measure wording job warranty closeout drawing.shape paperwork paperwork.part paperwork.work
      paperwork.billing    | measure money job company law law.release pricing contract billing paperwork paperwork.part
      paperwork.crew       | measure finding wording job company pricebook trench takeoff schedule safety.way safety paperwork paperwork.part paperwork.work
      paperwork.buying     | measure money finding wording job pricebook trench buying paperwork paperwork.part
      drawing.chart        | drawing.shape
      paperwork.season     | money company bids feedback drawing.shape drawing.chart paperwork paperwork.part season
      drawing.crew         | drawing.shape
      paperwork.cost       | measure money finding working job company pricebook takeoff schedule pricing contract whatif feedback drawing.shape paperwork paperwork.part paperwork.work paperwork.contract drawing.chart drawing.crew
      press.template       | spelling reason wording
      press.font           |
      press.svg            | drawing.shape paperwork.work
      press.page           | reason wording press.template press.font press.svg
      press.signing        | wording
      press.sheet          | reason wording press.template
      listing              | measure money finding working job warranty register takeoff pricing figure contract bids
      pricesheet           | measure money finding wording pricebook
      post                 |
      office.reply         | finding press.template
      cli.option           | office.reply
      intake.source        | finding spelling disk
      intake.value         | measure money spelling wording job pricebook intake.source
      intake.book          | measure money spelling job company pricebook intake.source intake.value
      intake.company       | measure money wording job company intake.source intake.value
      intake.check         | measure finding job pricebook intake.source intake.value
      intake.job           | measure money spelling wording job company pricebook trench intake.source intake.value intake.company intake.check
      intake.law           | measure money finding law law.release intake.source intake.value
      intake               | finding job company pricebook intake.source intake.value intake.book intake.company intake.job intake.law
      office.book          | measure money finding spelling reason wording disk company pricebook register draft press.sheet pricesheet office.reply intake
      office.files         | finding reason wording disk picture job company register draft paperwork intake.job intake
      office.records       | money finding wording disk job company pricebook register contract press.template press.page listing office.reply intake.law intake office.files billing
      office               | measure money finding wording disk job company pricebook law register takeoff schedule safety pricing figure contract closeout whatif drawing.shape drawing.plan paperwork paperwork.part paperwork.work paperwork.letter paperwork.proposal paperwork.scope paperwork.contract paperwork.completion paperwork.warranty paperwork.cost press.template press.font press.svg press.page press.signing press.sheet listing post office.reply intake.value intake.law intake office.files office.records
      office.agreement     | measure money finding reason wording disk job company pricebook law warranty register draft takeoff.wall takeoff pricing contract closeout drawing.shape drawing.plan paperwork paperwork.work paperwork.contract paperwork.warranty press.template intake.law intake office.files office.records office
      office.billing       | money finding wording disk job law law.release register draft contract billing paperwork paperwork.billing intake office.files office.records office office.agreement
      office.buying        | job company pricebook register takeoff schedule buying paperwork paperwork.buying office.files office
      cli.outcome          | cli.option office
      cli.account          | money billing cli.option cli.outcome office office.billing
      office.portfolio     | measure money finding reason wording disk job company pricebook register draft takeoff schedule pricing contract closeout bids whatif feedback drawing.shape paperwork paperwork.cost press.template press.page press.sheet listing office.reply intake.law intake office.book office.files office.records office office.agreement warranty billing season paperwork.season press.svg
      office.start         | money finding wording disk draft office.reply intake office.files office.records office
      office.store         | finding reason disk draft store store.folder store.postgres office.reply office.files
      cli.store            | reason disk cli.option office.reply office.files office.store store store.folder
      office.crew          | finding wording job draft takeoff schedule paperwork paperwork.scope paperwork.crew press.svg press.page office.reply office.files office office.start
      cli.start            | office.reply cli.option office office.start
      cli.book             | office.reply cli.option office.book office.portfolio
      cli.figure           | measure money job trench figure office
      cli.register         | office.reply cli.option office.records
      office.aftercare     | money finding wording disk warranty register paperwork paperwork.warranty press.template press.page press.sheet listing office.reply office.files office
      cli.warranty         | office.reply cli.option office.aftercare
      form.kit             | finding reason wording draft
      form.session         | measure money finding reason pricebook draft office.files office form.kit
      form.library         | measure money finding reason pricebook draft takeoff pricing bids feedback office.reply office.book office.files office office.portfolio form.kit form.session
      form.field           | finding draft form.kit form.session
      form.page            | measure money finding reason draft takeoff pricing drawing.shape drawing.plan office.reply office.files office office.agreement office.aftercare form.kit form.session form.field
      form.view            | measure money finding reason working pricebook draft takeoff pricing drawing.shape press.page office.files office office.portfolio form.kit form.session
      form                 | measure finding wording pricebook draft press.page office.reply office.files office form.kit form.session form.library form.page form.view
      cli.crew             | cli.option cli.outcome office.reply office office.crew
      cli                  | finding reason wording disk bids feedback press.signing office.reply cli.option office.book office.files office office.agreement office.portfolio office.store cli.start cli.book cli.figure cli.register cli.warranty form cli.outcome cli.account cli.store office.buying cli.crew
      cli.bundle           | disk form.kit cli
      """;

    /** Each library is known to the packages that need it. */
    private static final String LIBRARIES = """
      org.joda.money..        | money
      com.fasterxml..         | register draft listing intake.source intake.value intake.book intake.job intake
      com.ibm.icu..           | wording
      freemarker..            | press.template
      com.openhtmltopdf..     | press.font press.page
      org.apache.pdfbox..     | press.font press.page press.signing
      org.bouncycastle..      | press.signing
      org.apache.poi..        | press.sheet pricesheet
      org.apache.commons.csv.. | pricesheet office.crew
      org.apache.commons.math3.. | whatif
      com.google.zxing..      | press.svg
      jakarta..               | post
      com.formdev..           | form.kit
      net.miginfocom..        | form.kit form.library form.field form.page form.view form
      javax.swing..           | form.kit form.session form.library form.field form.page form.view form
      picocli..               | cli.option cli.outcome cli.account cli.store cli.start cli.book cli.figure cli.register cli.warranty cli.crew cli cli.bundle
      com.zaxxer..            | store.postgres
      org.flywaydb..          | store.postgres
      org.jdbi..              | store.postgres
      me.tongfei..            | cli
      org.jline..             | cli.option
      """;

    static final JavaClasses SHIPPED = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ROOT);

    @ParameterizedTest(name = "{0} imports only {1}")
    @MethodSource("imports")
    void packageImportsOnlyWhatItsRowNames(String name, List<String> allowed) {
        onlyWhatItsRowNames(name, allowed).check(SHIPPED);
    }

    /** javac copies an imported constant into the class file, so the source is read as well. */
    @ParameterizedTest(name = "{0} source imports only {1}")
    @MethodSource("imports")
    void sourceImportsOnlyWhatItsRowNames(String name, List<String> allowed) throws IOException {
        Pattern ours = Pattern.compile("^import (?:static )?" + ROOT + "\\.([a-z.]+)\\.[A-Z]");
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java", ROOT, name.replace('.', '/')))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                for (String line : Files.readAllLines(file)) {
                    var match = ours.matcher(line);
                    if (match.find() && !match.group(1).equals(name) && !allowed.contains(match.group(1))) {
                        wrong.add(file + ": " + line);
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @ParameterizedTest(name = "{0} is known only to {1}")
    @MethodSource("libraries")
    void libraryIsKnownOnlyToThePackagesOfItsRow(String library, List<String> allowed) {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        allowed.stream().map(ArchitectureTest::exactly).toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(SHIPPED);
    }

    @Test
    void everyPackageHasARow() {
        Set<String> rows = imports().map(row -> (String) row.get()[0]).collect(Collectors.toCollection(TreeSet::new));
        Set<String> found = SHIPPED.stream()
                .map(c -> c.getPackageName().substring(ROOT.length() + 1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(rows, found);
    }

    @Test
    void noPackageHoldsMoreThanThirtyClassesSideBySide() {
        Map<String, Long> sizes = SHIPPED.stream()
                .filter(one -> one.isTopLevelClass() && !one.getSimpleName().equals("package-info"))
                .filter(one -> isWrittenByHand(one.getName()))
                .map(one -> one.getPackageName().substring(ROOT.length() + 1))
                .filter(name -> !Set.of("job", "finding").contains(name))
                .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
        sizes.values().removeIf(classes -> classes <= 30);
        assertEquals(Map.of(), sizes);
    }

    /** Whether a class or the one around it has a source; the compiler writes the others, which copy records. */
    static boolean isWrittenByHand(String name) {
        String outer = name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
        return Files.exists(Path.of("src/main/java", outer.replace('.', '/') + ".java"));
    }

    @Test
    void rowNamesOnlyRowsAbove() {
        List<String> above = new ArrayList<>();
        imports().forEach(row -> {
            List<String> allowed = allowed(row);
            assertEquals(
                    List.of(),
                    allowed.stream().filter(p -> !above.contains(p)).toList(),
                    row.get()[0] + " names a row below it");
            above.add((String) row.get()[0]);
        });
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching(ROOT + ".(**)").should().beFreeOfCycles().check(SHIPPED);
    }

    @Test
    void onlyTheCommandLinePrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage(under("cli"))
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .check(SHIPPED);
    }

    @Test
    void nothingReadsTheClockOrTheLocale() {
        noClasses()
                .that()
                .resideOutsideOfPackages(under("cli"))
                .should()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .check(SHIPPED);
    }

    @Test
    void moneyIsNeverFloatingPoint() {
        noFields()
                .that()
                .areDeclaredInClassesThat()
                .resideInAnyPackage(under("money"), under("pricing"))
                .should()
                .haveRawType(double.class)
                .orShould()
                .haveRawType(float.class)
                .check(SHIPPED);
    }

    /** The rule of a row, by the row's name. */
    static ArchRule onlyWhatItsRowNames(String name) {
        return imports()
                .filter(row -> row.get()[0].equals(name))
                .map(row -> onlyWhatItsRowNames(name, allowed(row)))
                .findFirst()
                .orElseThrow();
    }

    private static ArchRule onlyWhatItsRowNames(String name, List<String> allowed) {
        return noClasses()
                .that()
                .resideInAPackage(exactly(name))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(ROOT + "..").and(not(resideInAnyPackage(exactly(name, allowed)))));
    }

    @SuppressWarnings("unchecked")
    private static List<String> allowed(Arguments row) {
        return (List<String>) row.get()[1];
    }

    private static Stream<Arguments> imports() {
        return rows(IMPORTS);
    }

    private static Stream<Arguments> libraries() {
        return rows(LIBRARIES);
    }

    private static Stream<Arguments> rows(String table) {
        return table.lines()
                .map(line -> line.split("\\|", -1))
                .map(cells -> Arguments.of(
                        cells[0].strip(),
                        cells[1].isBlank()
                                ? List.of()
                                : List.of(cells[1].strip().split("\\s+"))));
    }

    private static String under(String name) {
        return ROOT + "." + name + "..";
    }

    private static String exactly(String name) {
        return ROOT + "." + name;
    }

    private static String[] exactly(String name, List<String> more) {
        return Stream.concat(Stream.of(name), more.stream())
                .map(ArchitectureTest::exactly)
                .toArray(String[]::new);
    }
}
