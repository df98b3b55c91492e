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
import com.tngtech.archunit.library.GeneralCodingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
      measure   |
      money     | measure
      finding   |
      working   | measure
      job       | money measure
      company   | money measure job
      pricebook | money measure job company
      law       | money measure finding job
      intake    | money measure finding job company pricebook law
      draft     | measure
      warranty  | money finding
      register  | finding warranty
      trench    | measure working job
      water     | measure working job pricebook
      takeoff   | measure working job company pricebook trench water
      safety    | measure finding working job pricebook trench water takeoff
      pricing   | money measure working job company pricebook takeoff
      figure    | measure money finding working job pricebook law trench water takeoff safety pricing
      contract  | money measure job company pricebook takeoff pricing
      closeout  | money measure finding working job pricebook takeoff contract
      bids      | money measure job company pricebook takeoff pricing contract
      whatif    | money measure finding job company pricebook takeoff pricing
      feedback  | money measure job company pricebook takeoff pricing
      drawing   | measure working job pricebook trench water takeoff
      paperwork | money measure finding working job company pricebook warranty law trench water takeoff pricing contract closeout feedback drawing
      press     | money measure finding paperwork drawing
      listing   | measure money finding working job warranty register takeoff figure pricing contract bids
      pricesheet | money measure finding pricebook
      post      |
      office    | measure money finding job company pricebook law intake draft warranty register trench water takeoff safety figure pricing contract closeout bids whatif feedback drawing paperwork press listing pricesheet post
      form      | money measure finding working draft pricebook takeoff pricing bids feedback drawing press office
      cli       | measure money finding job figure bids feedback office form
      """;

    /** Each library is known to one package. */
    private static final String LIBRARIES = """
      org.joda.money..        | money
      com.fasterxml.. | intake draft register listing
      freemarker..            | press
      com.openhtmltopdf..     | press
      org.apache.pdfbox..     | press
      org.apache.poi..        | press pricesheet
      org.apache.commons.csv.. | pricesheet
      org.apache.commons.math3.. | whatif
      jakarta..               | post
      com.formdev..           | form
      net.miginfocom..        | form
      javax.swing..           | form
      picocli..               | cli
      me.tongfei..            | cli
      """;

    private static final JavaClasses SHIPPED = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(ROOT);

    @ParameterizedTest(name = "{0} imports only {1}")
    @MethodSource("imports")
    void packageImportsOnlyWhatItsRowNames(String name, List<String> allowed) {
        noClasses()
                .that()
                .resideInAPackage(under(name))
                .should()
                .dependOnClassesThat(resideInAnyPackage(ROOT + "..").and(not(resideInAnyPackage(under(name, allowed)))))
                .check(SHIPPED);
    }

    /** javac copies an imported constant into the class file, so the source is read as well. */
    @ParameterizedTest(name = "{0} source imports only {1}")
    @MethodSource("imports")
    void sourceImportsOnlyWhatItsRowNames(String name, List<String> allowed) throws IOException {
        Pattern ours = Pattern.compile("^import (?:static )?" + ROOT + "\\.(\\w+)\\.");
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java", ROOT, name))) {
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
    void libraryIsKnownToOnePackage(String library, List<String> allowed) {
        noClasses()
                .that()
                .resideOutsideOfPackages(allowed.stream().map(p -> under(p)).toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(SHIPPED);
    }

    @Test
    void everyPackageHasARow() {
        Set<String> rows = imports().map(row -> (String) row.get()[0]).collect(Collectors.toCollection(TreeSet::new));
        Set<String> found = SHIPPED.stream()
                .map(c -> c.getPackageName().substring(ROOT.length() + 1).split("\\.")[0])
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(rows, found);
    }

    @Test
    void rowNamesOnlyRowsAbove() {
        List<String> above = new ArrayList<>();
        imports().forEach(row -> {
            @SuppressWarnings("unchecked")
            List<String> allowed = (List<String>) row.get()[1];
            assertEquals(
                    List.of(),
                    allowed.stream().filter(p -> !above.contains(p)).toList(),
                    row.get()[0] + " names a row below it");
            above.add((String) row.get()[0]);
        });
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(SHIPPED);
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

    private static String[] under(String name, List<String> more) {
        return Stream.concat(Stream.of(name), more.stream()).map(p -> under(p)).toArray(String[]::new);
    }
}
