package org.pumpwright.host;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** Which package may use which, and where each library is confined: the table of DEVELOPERS.md as tests. */
@AnalyzeClasses(packages = "org.pumpwright", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    private static final String HOST = "org.pumpwright.host.";
    private static final String PROTOCOL = "org.pumpwright.protocol..";
    private static final List<String> PACKAGES = List.of(
            "quantity",
            "calibration",
            "plant",
            "datafile",
            "trace",
            "signal",
            "catalog",
            "plan",
            "rule",
            "curve",
            "calibrate",
            "demand",
            "stand",
            "run",
            "grade",
            "text",
            "record",
            "claim",
            "report",
            "app",
            "ui",
            "cli");

    @ArchTest
    static final ArchRule noCycles =
            slices().matching("org.pumpwright.host.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule quantity = mayUse("quantity");

    @ArchTest
    static final ArchRule calibration = mayUse("calibration", "quantity");

    @ArchTest
    static final ArchRule plant = mayUse("plant");

    @ArchTest
    static final ArchRule datafile = mayUse("datafile", "quantity");

    @ArchTest
    static final ArchRule trace = mayUse("trace", "quantity", "calibration");

    @ArchTest
    static final ArchRule signal = mayUse("signal", "quantity");

    @ArchTest
    static final ArchRule catalog = mayUse("catalog", "quantity", "datafile");

    @ArchTest
    static final ArchRule plan = mayUse("plan", "quantity", "trace", "catalog", "datafile");

    @ArchTest
    static final ArchRule rule = mayUse("rule", "quantity", "catalog", "datafile");

    @ArchTest
    static final ArchRule calibrate = mayUse("calibrate", "quantity", "calibration");

    @ArchTest
    static final ArchRule demand = mayUse("demand", "quantity");

    @ArchTest
    static final ArchRule squareCodes = confined("com.google.zxing..", HOST + "report..");

    @ArchTest
    static final ArchRule curve = mayUse("curve", "quantity", "signal", "datafile");

    @ArchTest
    static final ArchRule stand = mayUse("stand", "quantity", "calibration", "trace", "datafile");

    @ArchTest
    static final ArchRule run = mayUse("run", "quantity", "trace", "plan", "stand", "signal");

    @ArchTest
    static final ArchRule grade =
            mayUse("grade", "quantity", "calibration", "trace", "catalog", "curve", "plan", "rule", "signal");

    @ArchTest
    static final ArchRule record = mayUse("record", "quantity", "calibration", "trace", "curve", "grade", "rule");

    @ArchTest
    static final ArchRule text = mayUse("text", "datafile");

    @ArchTest
    static final ArchRule claim = mayUse("claim", "quantity", "datafile", "catalog", "grade", "record");

    @ArchTest
    static final ArchRule report = mayUse(
            "report",
            "quantity",
            "calibration",
            "calibrate",
            "trace",
            "curve",
            "demand",
            "grade",
            "record",
            "rule",
            "claim",
            "text");

    @ArchTest
    static final ArchRule nothingKnowsTheCommandLine = noClasses()
            .that(resideOutsideOfPackages(HOST + "cli.."))
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "cli.."));

    @ArchTest
    static final ArchRule onlyTheFacesKnowTheUseCases = noClasses()
            .that(resideOutsideOfPackages(HOST + "cli..", HOST + "ui..", HOST + "app.."))
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "app.."));

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsTheWindow = noClasses()
            .that(resideOutsideOfPackages(HOST + "cli..", HOST + "ui.."))
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "ui.."));

    @ArchTest
    static final ArchRule windowToolkit = confined("javafx..", HOST + "ui..");

    /** What a screen shows is tested without a window: no node, no control. */
    @ArchTest
    static final ArchRule whatScreensShowHasNoControls = noClasses()
            .that(resideInAPackage(HOST + "ui.work.."))
            .should()
            .dependOnClassesThat(
                    resideInAnyPackage("javafx.scene..", "javafx.stage..", HOST + "ui", HOST + "ui.control.."));

    /** One command opens the window; the others start without loading its toolkit. */
    @ArchTest
    static final ArchRule onlyTheBenchCommandOpensTheWindow = noClasses()
            .that(resideInAPackage(HOST + "cli.."))
            .and()
            .doNotHaveSimpleName("BenchCommand")
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "ui.."));

    /** The papers, the use case and the command of a bucket test stand on what their packages share, never the other way round. */
    @ArchTest
    static final ArchRule papersOfABucketTest = standsAbove("report.bucket", "report");

    @ArchTest
    static final ArchRule useCaseOfABucketTest = standsAbove("app.bucket", "app");

    @ArchTest
    static final ArchRule papersOfAClaim = standsAbove("report.claim", "report");

    @ArchTest
    static final ArchRule papersOfARetest = standsAbove("report.retest", "report");

    @ArchTest
    static final ArchRule sheetsOfPapers = standsAbove("report.sheet", "report");

    @ArchTest
    static final ArchRule useCasesOfTheDesk = standsAbove("app.claim", "app");

    @ArchTest
    static final ArchRule useCasesOfPapers = standsAbove("app.paper", "app");

    @ArchTest
    static final ArchRule commandsKnowNoDatabase = noClasses()
            .that(resideInAPackage(HOST + "cli.."))
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "record.sql.."));

    @ArchTest
    static final ArchRule commandOfABucketTest = noClasses()
            .that(resideInAPackage(HOST + "cli"))
            .and()
            .doNotHaveSimpleName("PumpwrightCommand")
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "cli.bucket.."));

    @ArchTest
    static final ArchRule serialLibrary = confined("com.fazecast..", HOST + "stand.serial..");

    @ArchTest
    static final ArchRule commandLineLibrary = confined("picocli..", HOST + "cli..");

    @ArchTest
    static final ArchRule yamlAndSchemas = confined("com.networknt..", HOST + "datafile..");

    @ArchTest
    static final ArchRule yaml = confined("tools.jackson.dataformat.yaml..", HOST + "datafile..");

    @ArchTest
    static final ArchRule json = confined(
            "tools.jackson..",
            HOST + "datafile..",
            HOST + "record..",
            HOST + "grade..",
            HOST + "claim..",
            HOST + "cli..");

    @ArchTest
    static final ArchRule databases = noClasses()
            .that(resideOutsideOfPackages(HOST + "record.sql.."))
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                    "java.sql..",
                    "javax.sql..",
                    "org.jdbi..",
                    "com.zaxxer..",
                    "org.flywaydb..",
                    "org.sqlite..",
                    "org.postgresql.."));

    @ArchTest
    static final ArchRule pdf = noClasses()
            .that(resideOutsideOfPackages(HOST + "report.pdf.."))
            .should()
            .dependOnClassesThat(
                    resideInAnyPackage("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.xmpbox.."));

    @ArchTest
    static final ArchRule canonicalJson = confined("org.erdtman..", HOST + "record.ledger..");

    @ArchTest
    static final ArchRule wireCodec =
            confined(PROTOCOL, HOST + "stand.wire..", HOST + "stand.simulated..", HOST + "stand.conform..", PROTOCOL);

    @ArchTest
    static final ArchRule theCodecKnowsNoHost = noClasses()
            .that(resideInAPackage(PROTOCOL))
            .should()
            .dependOnClassesThat(resideInAPackage("org.pumpwright.host.."));

    @ArchTest
    static final ArchRule aRunKnowsNoWayOfReachingAStand = noClasses()
            .that(resideInAPackage(HOST + "run.."))
            .should()
            .dependOnClassesThat(resideInAPackage(HOST + "stand.*.."));

    @ArchTest
    static final ArchRule onlyTheEntryEndsTheProcess = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(HOST + "cli.Main")
            .should()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule onlyLinesReadTheClock = noClasses()
            .that(resideOutsideOfPackages(HOST + "stand.serial..", HOST + "stand.simulated.."))
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis");

    /** The package uses nothing of the host but itself and these; the ways of reaching a stand have rules of their own. */
    private static ArchRule mayUse(String name, String... others) {
        String[] forbidden = PACKAGES.stream()
                .filter(each -> !each.equals(name) && !List.of(others).contains(each))
                .map(each -> HOST + each + "..")
                .toArray(String[]::new);
        String own = HOST + name + (name.equals("stand") ? "" : "..");
        return noClasses().that(resideInAPackage(own)).should().dependOnClassesThat(resideInAnyPackage(forbidden));
    }

    private static ArchRule standsAbove(String upper, String lower) {
        return noClasses()
                .that(resideInAPackage(HOST + lower))
                .should()
                .dependOnClassesThat(resideInAPackage(HOST + upper + ".."));
    }

    private static ArchRule confined(String library, String... homes) {
        return noClasses().that(resideOutsideOfPackages(homes)).should().dependOnClassesThat(resideInAPackage(library));
    }
}
