package org.steelyard.spark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import org.apache.hadoop.fs.FileStatus;
import org.apache.spark.Partitioner;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.storage.StorageLevel;
import org.steelyard.spark.merge.MergeableTally;
import org.steelyard.spark.merge.PlacedFlight;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.type.NotChecked;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.season.RowReader;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.read.season.SourceFile;
import org.steelyard.report.file.FileSum;
import org.steelyard.spark.merge.MergedReports;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.run.DuplicateText;
import org.steelyard.run.RowAuditor;
import org.steelyard.run.SeasonOutcome;
import scala.Tuple2;

/**
 * Audits one season on Spark. Files are looked at, large texts cut into pieces; a first pass counts the flights of each
 * piece and gathers their keys; a second one computes them. What the driver holds grows with the number of files, pieces
 * and groups, not with that of flights.
 */
public final class SparkRun {

    private final JavaSparkContext spark;
    private final SparkRequest request;
    private final Policy policy;
    private final Store store;
    private final Broadcast<Setup> setup;
    private final List<SeasonFile> files = new ArrayList<>();
    private final List<RunFacts.SkippedFile> skippedFiles = new ArrayList<>();
    private List<Inspected> looks = List.of();

    private SparkRun(JavaSparkContext spark, SparkRequest request) throws IOException {
        this.spark = spark;
        this.request = request;
        this.policy = request.configuration().policy();
        String run = UUID.randomUUID().toString();
        Setup made = new Setup(run, request.config(), request.reading(), request.by(), spark.hadoopConfiguration());
        store = new Store(spark.hadoopConfiguration());
        setup = spark.broadcast(made);
    }

    /**
     * Audits a season and writes its reports.
     *
     * @param spark runs the work
     * @param request what and how
     * @return what came of it
     * @throws SeasonUnreadableException if there is nothing to read where the season should be
     * @throws IOException if something cannot be read or written; reports of an earlier run are then still whole
     */
    public static SeasonOutcome audit(JavaSparkContext spark, SparkRequest request)
            throws SeasonUnreadableException, IOException {
        SparkRun run = new SparkRun(spark, request);
        try {
            run.list();
            try (ReportsFolder reports = ReportsFolder.open(run.store, request, run.files, run::changed)) {
                return run.audit(reports);
            }
        } finally {
            run.forget();
        }
    }

    /** Takes back what the workers were sent, if there are any left. */
    private void forget() {
        if (!spark.sc().isStopped()) {
            setup.destroy();
        }
    }

    private SeasonOutcome audit(ReportsFolder reports) throws SeasonUnreadableException, IOException {
        look();
        List<Piece> pieces = number(cut());
        JavaRDD<Survey> surveyed = survey(pieces);
        List<Survey> surveys = surveys(surveyed);
        Set<Integer> doubtful = new HashSet<>();
        surveys.stream().filter(Survey::doubtful).forEach(survey -> doubtful.add(survey.file()));
        if (!doubtful.isEmpty()) {
            surveyed.unpersist(false);
            pieces = number(wholes(pieces, doubtful));
            surveyed = survey(pieces);
            surveys = surveys(surveyed);
        }
        JavaRDD<Twice> twice = twice(surveyed).persist(StorageLevel.DISK_ONLY());
        long[] places = places(pieces, surveys, twice);
        Part all = audit(pieces, places, twice, reports.staging());
        twice.unpersist(false);
        surveyed.unpersist(false);
        return write(all, surveys, reports);
    }

    // which files

    private void list() throws SeasonUnreadableException, IOException {
        if (!store.exists(request.season())) {
            throw unreadable("there is no such file or folder");
        }
        boolean isFolder = store.isFolder(request.season());
        Earlier outputs = Earlier.in(store, request.season());
        for (FileStatus entry : store.list(request.season())) {
            String name = entry.getPath().getName();
            Optional<String> reason = reasonToSkip(entry);
            if (reason.isEmpty() && isFolder && outputs.holds(name)) {
                reason = Optional.of(SeasonFolder.OUTPUT);
            }
            if (reason.isEmpty()) {
                files.add(new SeasonFile(entry.getPath().toString(), name, entry.getLen()));
            } else {
                skippedFiles.add(new RunFacts.SkippedFile(name, reason.get()));
            }
        }
        if (files.isEmpty()) {
            throw unreadable(isFolder ? "the folder holds no file to read" : skippedFiles.get(0).reason());
        }
    }

    private Optional<String> reasonToSkip(FileStatus entry) throws IOException {
        String name = entry.getPath().getName();
        boolean parquet = name.endsWith(".parquet") && !name.startsWith(".") && entry.isFile();
        Optional<String> reason =
                parquet ? Optional.empty() : SeasonFolder.reasonToSkip(name, entry.isDirectory());
        boolean isNoFile = store.local(entry.getPath().toString())
                .filter(path -> !Files.isRegularFile(path))
                .isPresent();
        return reason.isEmpty() && isNoFile ? Optional.of(SeasonFolder.NO_FILE) : reason;
    }

    /** Which files of an earlier run are not as it left them; they may be many and large. */
    private List<String> changed(SortedMap<String, List<FileSum>> found) {
        if (found.isEmpty()) {
            return List.of();
        }
        List<Tuple2<String, List<FileSum>>> listed = new ArrayList<>();
        found.forEach((address, sums) -> listed.add(new Tuple2<>(address, sums)));
        Broadcast<Setup> shared = setup;
        return spark.parallelize(listed, parts(listed.size()))
                .filter(file -> !new Store(shared.value().hadoop()).isOneOf(file._1(), file._2()))
                .map(Tuple2::_1)
                .collect();
    }

    private SeasonUnreadableException unreadable(String reason) {
        String name = request.season().substring(request.season().lastIndexOf('/') + 1);
        return new SeasonUnreadableException(List.of(new InputProblem(
                new Origin(name.isEmpty() ? "season" : name, "", 0),
                "",
                ProblemCode.UNREADABLE,
                reason,
                request.season(),
                "a file (.csv, .tsv, .txt, .xlsx or .parquet) or a folder of them")));
    }

    private void look() throws InputRefused {
        List<Tuple2<Integer, SeasonFile>> numbered = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            numbered.add(new Tuple2<>(i, files.get(i)));
        }
        Broadcast<Setup> shared = setup;
        List<Inspected> found = new ArrayList<>(spark.parallelize(numbered, parts(numbered.size()))
                .map(file -> Inspected.of(
                        file._1(),
                        file._2(),
                        shared.value(),
                        new Store(shared.value().hadoop())))
                .collect());
        found.sort(Comparator.comparingInt(Inspected::file));
        looks = found;
        for (Inspected look : looks) {
            if (look.items() || look.rejected()) {
                throw new InputRefused(files.get(look.file()).name() + ": "
                        + (look.items() ? "load items" : "rejected rows put right")
                        + " are not read here, as they belong to rows of other files (expected flights, a row each;"
                        + " an audit on one machine reads this season)");
            }
        }
    }

    private int parts(int elements) {
        return Math.max(1, Math.min(request.partitions(), elements));
    }

    // pieces

    private List<Piece> cut() throws IOException {
        List<Tuple2<Integer, long[]>> stretches = new ArrayList<>();
        for (Inspected look : looks) {
            SeasonFile file = files.get(look.file());
            if (look.headBytes() > 0) {
                long from = look.headBytes();
                while (from < file.bytes()) {
                    long to = Cuts.place(from + request.pieceBytes(), file, store);
                    stretches.add(new Tuple2<>(look.file(), new long[] {from, to, look.delimiter()}));
                    from = to;
                }
            }
        }
        Map<Integer, List<TextScan>> scans = scan(stretches);
        List<Piece> pieces = new ArrayList<>();
        for (Inspected look : looks) {
            SeasonFile file = files.get(look.file());
            if (scans.containsKey(look.file())) {
                pieces.addAll(Cuts.pieces(file, look, scans.get(look.file())));
            } else {
                pieces.add(Piece.whole(look.file(), file));
            }
        }
        return pieces;
    }

    private Map<Integer, List<TextScan>> scan(List<Tuple2<Integer, long[]>> stretches) {
        Map<Integer, List<TextScan>> scans = new HashMap<>();
        if (stretches.isEmpty()) {
            return scans;
        }
        Broadcast<Setup> shared = setup;
        List<SeasonFile> known = new ArrayList<>(files);
        List<Tuple2<Integer, TextScan>> scanned = spark.parallelize(stretches, parts(stretches.size()))
                .map(stretch -> new Tuple2<>(
                        stretch._1(),
                        Cuts.scan(
                                known.get(stretch._1()),
                                stretch._2()[0],
                                stretch._2()[1],
                                (char) stretch._2()[2],
                                new Store(shared.value().hadoop()))))
                .collect();
        scanned.forEach(one ->
                scans.computeIfAbsent(one._1(), file -> new ArrayList<>()).add(one._2()));
        scans.values().forEach(list -> list.sort(Comparator.comparingLong(TextScan::from)));
        return scans;
    }

    private List<Piece> wholes(List<Piece> pieces, Set<Integer> doubtful) {
        List<Piece> all = new ArrayList<>();
        for (Piece piece : pieces) {
            if (!doubtful.contains(piece.file())) {
                all.add(piece);
            } else if (piece.first()) {
                all.add(Piece.whole(piece.file(), files.get(piece.file())));
            }
        }
        return all;
    }

    private static List<Piece> number(List<Piece> pieces) {
        List<Piece> numbered = new ArrayList<>();
        pieces.forEach(piece -> numbered.add(piece.numbered(numbered.size())));
        return numbered;
    }

    // first pass

    private JavaRDD<Survey> survey(List<Piece> pieces) {
        Broadcast<Setup> shared = setup;
        return spark.parallelize(pieces, parts(pieces.size()))
                .map(piece -> Survey.of(piece, shared.value(), new Store(shared.value().hadoop())))
                .persist(StorageLevel.DISK_ONLY());
    }

    private static List<Survey> surveys(JavaRDD<Survey> surveyed) {
        return surveyed.map(Survey::withoutKeys).collect();
    }

    private JavaRDD<Twice> twice(JavaRDD<Survey> surveyed) {
        DuplicateRule rule = policy.duplicates();
        return surveyed.flatMap(survey -> survey.keys().iterator())
                .mapToPair(key -> new Tuple2<>(new Tuple2<>(key.high(), key.low()), key))
                .groupByKey(request.partitions())
                .flatMap(rows -> Twice.judge(rule, rows._2()).iterator());
    }

    /** The place of the first flight of each piece among the flights that count. */
    private static long[] places(List<Piece> pieces, List<Survey> surveys, JavaRDD<Twice> twice) {
        Map<Integer, Long> out = twice.filter(one -> !one.counts())
                .mapToPair(one -> new Tuple2<>(one.piece(), 1L))
                .reduceByKey(Long::sum)
                .collectAsMap();
        long[] flights = new long[pieces.size()];
        surveys.forEach(survey -> flights[survey.piece()] = survey.flights() - out.getOrDefault(survey.piece(), 0L));
        long[] places = new long[pieces.size()];
        for (int i = 1; i < places.length; i++) {
            places[i] = places[i - 1] + flights[i - 1];
        }
        return places;
    }

    // second pass

    /** Pieces that follow each other stay together. */
    private static final class InOrder extends Partitioner {

        private static final long serialVersionUID = 1;

        private final int parts;
        private final int pieces;

        InOrder(int parts, int pieces) {
            this.parts = parts;
            this.pieces = pieces;
        }

        @Override
        public int numPartitions() {
            return parts;
        }

        @Override
        public int getPartition(Object piece) {
            return (int) ((long) (Integer) piece * parts / pieces);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof InOrder that && that.parts == parts && that.pieces == pieces;
        }

        @Override
        public int hashCode() {
            return 31 * parts + pieces;
        }
    }

    private Part audit(List<Piece> pieces, long[] places, JavaRDD<Twice> twice, String into) {
        Broadcast<Setup> shared = setup;
        InOrder inOrder = new InOrder(parts(pieces.size()), pieces.size());
        List<Tuple2<Integer, Tuple2<Piece, Long>>> numbered = new ArrayList<>();
        pieces.forEach(
                piece -> numbered.add(new Tuple2<>(piece.number(), new Tuple2<>(piece, places[piece.number()]))));
        JavaPairRDD<Integer, Twice> byPiece = twice.mapToPair(one -> new Tuple2<>(one.piece(), one));
        return spark.parallelizePairs(numbered, inOrder.numPartitions())
                .cogroup(byPiece, inOrder)
                .mapPartitions(group -> List.of(part(shared.value(), into, group)).iterator())
                .treeReduce(Part::merge);
    }

    private static Part part(
            Setup setup,
            String staging,
            Iterator<Tuple2<Integer, Tuple2<Iterable<Tuple2<Piece, Long>>, Iterable<Twice>>>> pieces)
            throws IOException {
        Part part = Part.empty(setup);
        Store store = new Store(setup.hadoop());
        String attempt = Long.toString(TaskContext.get().taskAttemptId());
        while (pieces.hasNext()) {
            Tuple2<Iterable<Tuple2<Piece, Long>>, Iterable<Twice>> next = pieces.next()._2();
            for (Tuple2<Piece, Long> piece : next._1()) {
                PieceAudit.run(setup, store, staging, attempt, part, piece._1(), next._2(), piece._2());
            }
        }
        return part;
    }

    // outputs

    private SeasonOutcome write(Part all, List<Survey> surveys, ReportsFolder reports)
            throws IOException, SeasonUnreadableException {
        List<InputProblem> problems = new ArrayList<>();
        RunFacts facts = facts(all, surveys, problems);
        if (facts.rowsSeen() == 0 && !problems.isEmpty()) {
            throw new SeasonUnreadableException(problems);
        }
        List<PlacedFlight> shown = shown(all.choice.chosen());
        SeasonSummary summary = all.tally.summary(request.configuration().types(), shown);
        List<String> written;
        try (Scratch scratch = new Scratch()) {
            MergedReports.write(
                    scratch.folder(),
                    policy,
                    new MergedReports.Season(
                            summary,
                            facts,
                            problems,
                            shown,
                            all.firstRejected().stream().map(Sent.Rejected::row).toList(),
                            all.reasons,
                            sums(all.written)));
            written = reports.publish(all.written, scratch.folder().resolve(request.name()));
        }
        return new SeasonOutcome(summary, facts, problems, Path.of(request.name()), written, policy.chance());
    }

    private RunFacts facts(Part all, List<Survey> surveys, List<InputProblem> problems) {
        List<RunFacts.InputFile> inputs = new ArrayList<>();
        List<RunFacts.SkippedFile> skipped = new ArrayList<>(skippedFiles);
        List<Survey> inOrder = new ArrayList<>(surveys);
        inOrder.sort(Comparator.comparingInt(Survey::piece));
        Set<Integer> told = new HashSet<>();
        for (Survey survey : inOrder) {
            if (told.add(survey.file())) {
                inputs.add(input(survey, all.ofFile(survey.file())));
                List<String> sheets = survey.said().skipped();
                for (int i = 0; i < sheets.size(); i += 2) {
                    skipped.add(new RunFacts.SkippedFile(sheets.get(i), sheets.get(i + 1)));
                }
                survey.said().problems().forEach(problem -> problems.add(problem.problem()));
            }
        }
        List<RunFacts.ConfigFile> config = request.configuration().sources().stream()
                .map(source -> new RunFacts.ConfigFile(source.path(), source.sha256()))
                .toList();
        SkippedRows rows = new SkippedRows(
                all.skipKinds, all.firstSkipped().stream().map(Sent.Skipped::row).toList());
        return new RunFacts(
                request.name(),
                request.version(),
                request.options(),
                inputs,
                config,
                skipped,
                rows,
                Remarks.of(all.tally, all.firstRejected().size(), rejected(inputs)),
                request.configuration().types().values().stream()
                        .flatMap(type -> NotChecked.of(type).stream())
                        .toList());
    }

    private static long rejected(List<RunFacts.InputFile> inputs) {
        return inputs.stream().mapToLong(RunFacts.InputFile::rejected).sum();
    }

    private RunFacts.InputFile input(Survey survey, Part.Rows rows) {
        SeasonFile file = files.get(survey.file());
        List<String> notes = new ArrayList<>(survey.said().notes());
        notes.addAll(DuplicateText.note(
                policy.duplicates(), rows.countedAgain, rows.countedToo, rows.firstCounted));
        return new RunFacts.InputFile(
                file.name(),
                looks.get(survey.file()).sha256(),
                file.bytes(),
                String.join(", ", survey.said().maps()),
                rows.accepted + rows.rejected + rows.blank + rows.skipped,
                rows.accepted,
                rows.rejected,
                rows.blank,
                rows.skipped,
                notes);
    }

    /** The flights that are shown one by one, computed once more from their rows. */
    private List<PlacedFlight> shown(SortedMap<Long, Part.Shown> chosen) throws IOException {
        Map<Integer, Map<String, RowReader>> readers = new HashMap<>();
        List<PlacedFlight> shown = new ArrayList<>();
        for (Map.Entry<Long, Part.Shown> one : chosen.entrySet()) {
            Part.Shown row = one.getValue();
            Map<String, RowReader> ofFile = readers.get(row.file());
            if (ofFile == null) {
                ofFile = readers(row.file());
                readers.put(row.file(), ofFile);
            }
            if (ofFile.get(row.sheet()).parse(row.row()) instanceof ParsedRow.Accepted accepted) {
                shown.add(new PlacedFlight(one.getKey(), RowAuditor.audit(accepted.loading(), policy)));
            } else {
                throw new IllegalStateException("a flight is none when its row is read again: "
                        + files.get(row.file()).name() + ":" + row.row().number());
            }
        }
        return shown;
    }

    private Map<String, RowReader> readers(int number) throws IOException {
        SeasonFile file = files.get(number);
        long head = looks.get(number).headBytes();
        Piece opening = new Piece(0, number, file.address(), file.name(), 0, 0, 0, head > 0 ? head : file.bytes(), 0, -1);
        try (OpenPiece open = OpenPiece.open(opening, setup.value(), store)) {
            SourceFile source = open.source();
            return source.readers();
        }
    }

    private static SortedMap<String, FileSum> sums(List<Part.Written> written) {
        SortedMap<String, FileSum> sums = new TreeMap<>();
        written.forEach(part -> sums.put(part.name(), part.sum()));
        return sums;
    }
}
