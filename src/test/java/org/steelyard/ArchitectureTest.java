package org.steelyard;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.charset.Charset;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Scanner;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.Timer;
import java.util.UUID;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;

/** Holds the arrows of the design: config, read → balance → check → analyse, grade → report, wired by cli. */
@AnalyzeClasses(packages = "org.steelyard", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    private static final String[] PURE = packages("model", "balance", "check", "remedy", "trim", "grade");

    /** The JDK without files, network, threads, logging and text formats. */
    private static final String[] JDK_VALUES = {
        "java.lang",
        "java.lang.annotation",
        "java.lang.invoke",
        "java.lang.runtime",
        "java.math",
        "java.time..",
        "java.util",
        "java.util.function",
        "java.util.regex",
        "java.util.stream"
    };

    private static final String[] JDK_FILES = {"java.io..", "java.nio..", "java.util.concurrent..", "java.util.zip"};

    private static final String[] JACKSON = {"com.fasterxml.jackson.."};
    private static final String[] CSV = {"org.apache.commons.csv.."};
    private static final String[] STREAMS = {"org.apache.commons.io.."};
    private static final String[] POI = {"org.apache.poi.."};
    private static final String[] POI_SCHEMAS = {"org.openxmlformats.schemas..", "org.apache.xmlbeans.."};
    private static final String[] ZIP = {"org.apache.commons.compress.."};
    private static final String[] TABLESAW = {"tech.tablesaw.."};
    private static final String[] MATH = {"org.apache.commons.math3..", "it.unimi.dsi.fastutil.."};

    @ArchTest
    static final ArchRule everyClassLivesInAPackageOfTheDesign = classes()
            .should()
            .resideInAnyPackage(packages(
                    "model", "config", "read", "balance", "check", "remedy", "trim", "grade", "analyse", "report",
                    "run", "cli", "spark"))
            .because("a package outside the design's table would have no rule on what it may use");

    @ArchTest
    static final ArchRule modelUsesValuesOfTheJdkOnly = only("model", packages("model"), JDK_VALUES)
            .because("every package shares the model, so what it drags in they all drag in");

    @ArchTest
    static final ArchRule configUsesModelJacksonAndCsvOnly = only(
                    "config", packages("model", "config"), JDK_VALUES, JDK_FILES, JACKSON, CSV, new String[] {
                        "java.security"
                    })
            .because("it turns files into the model and computes nothing");

    @ArchTest
    static final ArchRule readUsesModelCsvAndEventReadingOnly = only(
                    "read", packages("model", "read"), JDK_VALUES, JDK_FILES, CSV, STREAMS, POI, new String[] {
                        "java.security", "javax.xml.stream..", "org.apache.commons.compress.archivers.zip"
                    })
            .because("rows become loadings without anything being computed from them");

    @ArchTest
    static final ArchRule readNeverLoadsAWholeWorkbook = noClasses()
            .that()
            .resideInAnyPackage(packages("read"))
            .should()
            .dependOnClassesThat(resideInAnyPackage(
                            "org.apache.poi.xssf.usermodel..",
                            "org.apache.poi.xssf.streaming..",
                            "org.apache.poi.hssf.usermodel..")
                    .or(name("org.apache.poi.ss.usermodel.WorkbookFactory")))
            .because("a season may be larger than the memory: sheets are read event by event")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nobodyMakesAnXmlReaderOfTheirOwn = noClasses()
            .should()
            .accessTargetWhere(member(XMLInputFactory.class, "newInstance", "newFactory", "newDefaultFactory"))
            .orShould()
            .dependOnClassesThat()
            .resideInAnyPackage("javax.xml.parsers..", "javax.xml.transform..", "javax.xml.xpath..", "org.xml.sax..")
            .because("POI makes readers of XML without document types and outside entities; a new one would have both");

    @ArchTest
    static final ArchRule balanceUsesModelOnly = only("balance", packages("model", "balance"), JDK_VALUES)
            .because("the states of a flight follow from the loading and the type alone");

    @ArchTest
    static final ArchRule checkUsesModelAndBalanceOnly = only(
                    "check", packages("model", "balance", "check"), JDK_VALUES)
            .because("a finding follows from the states and the limits alone");

    @ArchTest
    static final ArchRule remedyUsesModelBalanceAndCheckOnly = only(
                    "remedy", packages("model", "balance", "check", "remedy"), JDK_VALUES)
            .because("a remedy follows from the flight and its limits alone, and goes back through balance and check")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule trimUsesModelAndBalanceOnly = only("trim", packages("model", "balance", "trim"), JDK_VALUES)
            .because("a scale follows from pairs or from an airframe alone, and chance is handed in");

    @ArchTest
    static final ArchRule gradeUsesModelBalanceAndCheckOnly = only(
                    "grade", packages("model", "balance", "check", "grade"), JDK_VALUES)
            .because("a mark compares what was claimed with what the same code computes for everyone");

    @ArchTest
    static final ArchRule analyseUsesTheCoreAndTablesawOnly = classes()
            .that()
            .resideInAnyPackage(packages("analyse"))
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(all(
                            packages("model", "balance", "check", "analyse"),
                            JDK_VALUES,
                            new String[] {"java.util.concurrent.."},
                            TABLESAW,
                            MATH))
                    .or(name("java.io.Serializable")))
            .because("statistics read results, never files, and are written by report; parts of them may be sent");

    @ArchTest
    static final ArchRule tablesawReadsAndWritesNoFiles = noClasses()
            .should()
            .dependOnClassesThat(resideInAPackage("tech.tablesaw.io.."))
            .because("its readers guess types, dates and decimal marks (007 becomes 7); we fill the columns ourselves")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule reportUsesEverythingButTheCommandLine = only(
                    "report",
                    packages(
                            "model", "config", "read", "balance", "check", "remedy", "trim", "grade", "analyse",
                            "report"),
                    JDK_VALUES,
                    JDK_FILES,
                    JACKSON,
                    CSV,
                    STREAMS,
                    POI,
                    POI_SCHEMAS,
                    ZIP,
                    TABLESAW,
                    new String[] {"java.awt", "java.security", "java.text", "javax.xml.."})
            .because("outputs come from results; whoever started the run does not matter to them");

    @ArchTest
    static final ArchRule runUsesEverythingButTheCommandLine = only(
                    "run",
                    packages(
                            "model", "config", "read", "balance", "check", "remedy", "trim", "grade", "analyse",
                            "report", "run"),
                    JDK_VALUES,
                    JDK_FILES,
                    new String[] {"java.security", "java.util.random"})
            .because("it wires the other packages for whoever calls them, without a terminal");

    @ArchTest
    static final ArchRule sparkAloneKnowsSpark = noClasses()
            .that()
            .resideOutsideOfPackages(packages("spark"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.apache.spark..",
                    "org.apache.hadoop..",
                    "org.apache.parquet..",
                    "org.apache.datasketches..",
                    "scala..")
            .because("the audit on one machine needs no engine, and another engine may be found one day")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nobodyKnowsTheAuditOnSpark = noClasses()
            .that()
            .resideOutsideOfPackages(packages("spark"))
            .should()
            .dependOnClassesThat(resideInAnyPackage(packages("spark")))
            .because("it is built by its own profile only");

    @ArchTest
    static final ArchRule sparkUsesEverythingByItsPublicEntryPoints = only(
                    "spark",
                    packages("model", "config", "read", "check", "analyse", "report", "run", "spark"),
                    JDK_VALUES,
                    JDK_FILES,
                    new String[] {
                        "java.net",
                        "org.apache.spark..",
                        "org.apache.hadoop..",
                        "org.apache.parquet..",
                        "org.apache.datasketches..",
                        "scala..",
                        "picocli.."
                    })
            .because("it only spreads the same work over many machines");

    @ArchTest
    static final ArchRule onlyTheCommandLineKnowsItsLibraries = noClasses()
            .that()
            .resideOutsideOfPackages(packages("cli", "spark"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("picocli..", "me.tongfei..", "org.jline..")
            .because("the work can be called from elsewhere, where there are no options and no terminal")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheCommandLinePrintsAndExits = noClasses()
            .that()
            .resideOutsideOfPackages(packages("cli", "spark"))
            .should()
            .accessTargetWhere(member(System.class, "in", "out", "err", "setIn", "setOut", "setErr", "console", "exit"))
            .orShould()
            .accessTargetWhere(member(Runtime.class, "exit", "halt"))
            .orShould()
            .accessTargetWhere(member(Throwable.class, "printStackTrace"))
            .because("everything else hands back values, and one place decides what is shown and with which exit code")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule thePureCoreKnowsNoClockNoChanceAndNoSurroundings = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat(belongToAnyOf(
                    Calendar.class,
                    Clock.class,
                    Date.class,
                    Process.class,
                    ProcessBuilder.class,
                    Random.class,
                    Runtime.class,
                    Scanner.class,
                    SplittableRandom.class,
                    Thread.class,
                    ThreadLocal.class,
                    TimeZone.class,
                    Timer.class,
                    UUID.class))
            .orShould()
            .accessTargetWhere(target(owner(resideInAPackage("java.time.."))).and(target(name("now"))))
            .orShould()
            .accessTargetWhere(member(Math.class, "random"))
            .orShould()
            .accessTargetWhere(member(StrictMath.class, "random"))
            .orShould()
            .accessTargetWhere(target(owner(belongToAnyOf(System.class))).and(not(target(name("arraycopy")))))
            .because("the same arguments give the same answer, on any day, machine and number of threads")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule nobodyAsksForADefaultLocaleZoneOrCharset = noClasses()
            .should()
            .accessTargetWhere(member(Locale.class, "getDefault"))
            .orShould()
            .accessTargetWhere(member(ZoneId.class, "systemDefault"))
            .orShould()
            .accessTargetWhere(member(TimeZone.class, "getDefault"))
            .orShould()
            .accessTargetWhere(member(Charset.class, "defaultCharset"))
            .because("the same season gives the same bytes in every country");

    @ArchTest
    static final ArchRule packagesFormNoCycle = slices().matching("org.steelyard.(**)")
            .should()
            .beFreeOfCycles()
            .because("data flows one way, from files to reports");

    private static ArchRule only(String name, String[]... allowed) {
        return classes()
                .that()
                .resideInAnyPackage(packages(name))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(all(allowed)))
                .allowEmptyShould(true);
    }

    private static String[] all(String[]... names) {
        return Stream.of(names).flatMap(Stream::of).toArray(String[]::new);
    }

    private static String[] packages(String... names) {
        return Stream.of(names).map(name -> "org.steelyard." + name + "..").toArray(String[]::new);
    }

    /** A field, a call or a method reference: a class does not get round a rule by writing {@code LocalDate::now}. */
    private static DescribedPredicate<JavaAccess<?>> member(Class<?> owner, String... names) {
        return DescribedPredicate.describe(
                owner.getSimpleName() + "." + String.join("/", names),
                access -> access.getTargetOwner().isAssignableTo(owner)
                        && List.of(names).contains(access.getTarget().getName()));
    }
}
