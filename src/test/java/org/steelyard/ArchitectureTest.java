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
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.File;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Calendar;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Scanner;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.Timer;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;

/** Holds the arrows of the design: config, read → balance → check → analyse, grade → report, wired by cli. */
@AnalyzeClasses(packages = "org.steelyard", importOptions = ArchitectureTest.Sources.class)
class ArchitectureTest {

    /** What is looked at; the sources of the engine are compiled in the profile of Spark only. */
    private static final List<Path> SOURCES = List.of(
            Path.of("src/main/java"),
            Path.of("src/demo/java"),
            Path.of("src/spark/merge/java"),
            Path.of("src/spark/java"));

    /** All rooms; each uses only rooms that stand below it here. */
    private static final List<String> ROOMS = List.of(
            "demo",
            "spark",
            "spark.merge",
            "cli",
            "cli.option",
            "cli.text",
            "run",
            "report.grade",
            "report.season",
            "report.flight",
            "report.output.book",
            "report.output.csv",
            "report.output.page",
            "report.type",
            "report.book",
            "report.column",
            "report.html",
            "report.table.season",
            "report.words",
            "report.output",
            "report.file",
            "report.table",
            "report.text",
            "grade.make",
            "grade.mark",
            "grade.text",
            "grade.working",
            "analyse.change",
            "analyse.season",
            "analyse.find",
            "analyse.part",
            "analyse.column",
            "analyse.figure",
            "remedy",
            "read.sheet",
            "read.season",
            "read.loading",
            "read.propose",
            "read.row",
            "read.heading",
            "read.table.text",
            "read.table.xlsx",
            "read.table",
            "read.text",
            "check.flight",
            "check.curtail",
            "check.result",
            "check.chance",
            "check.type",
            "check.text",
            "config.section",
            "config",
            "config.file",
            "config.type",
            "config.value",
            "config.source",
            "balance",
            "trim",
            "model.policy",
            "model.input",
            "model.loading",
            "model.type",
            "model.trim",
            "model.limit",
            "model.finding",
            "model.unit");

    /** The packages that call the others, and that nobody calls. */
    private static final List<String> OUTSIDE = List.of("cli", "demo", "run", "spark");

    /** The types of read and report that the outside knows, with what is nested in them. */
    private static final List<String> ENTRIES = List.of(
            "read.loading.GivenFlight",
            "read.propose.MapProposal",
            "read.propose.ProposalRequest",
            "read.propose.ProposedColumn",
            "read.row.FlightKey",
            "read.row.ParsedRow",
            "read.row.Tails",
            "read.season.RawRows",
            "read.season.RowReader",
            "read.season.SeasonFiles",
            "read.season.SourceFile",
            "read.sheet.GradeInput",
            "read.sheet.GradeReader",
            "read.table.RawRow",
            "read.table.ReadOptions",
            "read.table.SeasonFolder",
            "read.table.SeasonUnreadableException",
            "read.table.TextForm",
            "read.table.Unreadable",
            "report.column.ColumnList",
            "report.column.FindingList",
            "report.column.FlightList",
            "report.column.ListColumn",
            "report.file.Destination",
            "report.file.FileSum",
            "report.file.OutputFile",
            "report.file.OutputList",
            "report.file.StagedFolder",
            "report.file.WholeFile",
            "report.file.WriteFault",
            "report.flight.LoadSummary",
            "report.flight.LoadSummaryFile",
            "report.flight.TrimCardFiles",
            "report.grade.ExerciseFiles",
            "report.grade.GradeReports",
            "report.output.LeftOutGroupings",
            "report.output.RunFacts",
            "report.output.SeasonResult",
            "report.output.SkippedRows",
            "report.output.book.SeasonWorkbook",
            "report.output.book.WorkbookPart",
            "report.output.csv.RunJson",
            "report.output.csv.StatisticsCsv",
            "report.output.page.PageLimits",
            "report.output.page.PageSample",
            "report.output.page.ReportPage",
            "report.season.PartReports",
            "report.season.SeasonChangeFiles",
            "report.season.SeasonReports",
            "report.season.WrittenSeason",
            "report.table.Column",
            "report.table.ColumnKind",
            "report.table.DataTable",
            "report.table.TableCell",
            "report.table.season.FindingKindTable",
            "report.text.Caution",
            "report.text.ListCells",
            "report.type.OperationalEnvelopePage",
            "report.type.TypePages",
            "report.type.TypeTable",
            "report.type.TypeTables",
            "report.words.SeasonWords");

    private static final String BASE = "org.steelyard.";
    private static final Pattern IMPORT =
            Pattern.compile("^import (?:static )?(org\\.steelyard\\.[a-z.]+\\.[A-Z]\\w*)", Pattern.MULTILINE);

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
                    "run", "cli", "spark", "demo"))
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
                    packages("model", "config", "read", "balance", "check", "analyse", "report", "run", "spark"),
                    JDK_VALUES,
                    JDK_FILES,
                    MATH,
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
            .resideOutsideOfPackages(packages("cli", "spark", "demo"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("picocli..", "me.tongfei..", "org.jline..")
            .because("the work can be called from elsewhere, where there are no options and no terminal")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule onlyTheCommandLinePrintsAndExits = noClasses()
            .that()
            .resideOutsideOfPackages(packages("cli", "spark", "demo"))
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

    @ArchTest
    static final ArchRule eachRoomUsesOnlyRoomsBelowIt = classes()
            .should(useOnlyRoomsBelow())
            .because("whoever reads from the ground up meets nothing that comes later");

    @ArchTest
    static void everyRoomHasItsPlaceInTheOrder(JavaClasses classes) throws IOException {
        Set<String> rooms = new TreeSet<>();
        for (Path sources : SOURCES) {
            try (Stream<Path> files = Files.walk(sources)) {
                files.filter(file -> file.toString().endsWith(".java") && !file.endsWith("package-info.java"))
                        .forEach(file -> rooms.add(room(sources.relativize(file))));
            }
        }
        assertThat(ROOMS).containsExactlyInAnyOrderElementsOf(rooms);
        assertThat(classes).extracting(ArchitectureTest::room).isSubsetOf(ROOMS);
    }

    @ArchTest
    static void theOutsideUsesTheEntriesOfReadAndReportOnly(JavaClasses classes) throws IOException {
        Map<String, Set<String>> users = new TreeMap<>();
        for (JavaClass user : classes) {
            if (OUTSIDE.contains(house(room(user)))) {
                user.getDirectDependenciesFromSelf().stream()
                        .map(use -> outermost(use.getTargetClass().getName()))
                        .forEach(name -> used(users, name, user.getName()));
            }
        }
        try (Stream<Path> files = Files.walk(Path.of("src/spark/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher imported = IMPORT.matcher(Files.readString(file, StandardCharsets.UTF_8));
                while (imported.find()) {
                    used(users, imported.group(1), file.toString());
                }
            }
        }
        Map<String, Set<String>> unlisted = new TreeMap<>(users);
        unlisted.keySet().removeAll(ENTRIES);
        assertThat(unlisted).isEmpty();
        assertThat(users).containsOnlyKeys(ENTRIES);
    }

    private static void used(Map<String, Set<String>> users, String type, String user) {
        if (type.startsWith(BASE + "read.") || type.startsWith(BASE + "report.")) {
            users.computeIfAbsent(type.substring(BASE.length()), absent -> new TreeSet<>())
                    .add(user);
        }
    }

    private static ArchCondition<JavaClass> useOnlyRoomsBelow() {
        return new ArchCondition<>("use only rooms below their own") {
            @Override
            public void check(JavaClass user, ConditionEvents events) {
                for (Dependency use : user.getDirectDependenciesFromSelf()) {
                    boolean ours = use.getTargetClass().getPackageName().startsWith(BASE);
                    if (ours && ROOMS.indexOf(room(use.getTargetClass())) < ROOMS.indexOf(room(user))) {
                        events.add(SimpleConditionEvent.violated(user, use.getDescription()));
                    }
                }
            }
        };
    }

    private static String room(JavaClass type) {
        return type.getPackageName().substring(BASE.length());
    }

    private static String room(Path file) {
        String folder = String.valueOf(file.getParent()).replace(File.separatorChar, '.');
        return folder.substring(BASE.length());
    }

    private static String house(String room) {
        return room.split("\\.", 2)[0];
    }

    private static String outermost(String type) {
        return type.split("\\$", 2)[0];
    }

    /** Leaves out the tests, which lie in the same packages, and in the same folder as the demo and the engine. */
    static final class Sources implements ImportOption {

        private static final Pattern TYPE = Pattern.compile("/(org/steelyard/[^$]*?)(?:\\$.*)?\\.class$");

        @Override
        public boolean includes(Location location) {
            Matcher type = TYPE.matcher(location.asURI().toString());
            return type.find()
                    && !type.group(1).endsWith("/package-info")
                    && SOURCES.stream().anyMatch(sources -> Files.exists(sources.resolve(type.group(1) + ".java")));
        }
    }

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
