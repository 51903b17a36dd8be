package org.steelyard.cli;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Every command that writes, each in two variants that write the same files with other content. */
final class WritingJobs {

    private static final Path DEMO = Path.of("data-in/demo");

    /** Where the job's inputs lie, which nothing may touch. */
    private final Path in;

    private final Path out;

    private WritingJobs(Path in, Path out) {
        this.in = in;
        this.out = out;
    }

    /**
     * A command.
     *
     * @param name what it is called here
     * @param folder what it writes into
     * @param variants two command lines
     */
    record Job(String name, Path folder, List<List<String>> variants) {
        @Override
        public String toString() {
            return name;
        }
    }

    /** All of them, with inputs made in one folder and outputs to be made in another. */
    static List<Job> all(Path in, Path out) throws IOException {
        WritingJobs jobs = new WritingJobs(in, out);
        Path one = jobs.season("one", "season-2026-04.csv", StandardCharsets.UTF_8, 1, 220);
        Path two = jobs.season("two", "season-2026-05.csv", StandardCharsets.UTF_8, 1, 260);
        List<Job> all = new ArrayList<>();
        all.add(jobs.job(
                "audit",
                "reports",
                "audit " + one + " -n summer -q -o {}",
                "audit " + two + " -n summer -q --room -o {}"));
        all.add(jobs.job(
                "grade",
                "class",
                "grade data-in/class/sheets.csv -n c -o {}",
                "grade " + in + "/some.csv -g data-in/class/given.csv -n c -o {}"));
        all.add(jobs.job("cards", "cards", "cards -o {}", "cards --cg-step 2% -o {}"));
        all.add(jobs.job(
                "make-exercises",
                "exercises",
                "make-exercises jet180 --count 3 --seed 1 -o {}",
                "make-exercises jet180 --count 3 --seed 2 -o {}"));
        all.add(jobs.job(
                "against",
                "against",
                "against " + one + " " + two + " -o {}",
                "against " + one + " " + two + " --by pilot,from -o {}"));
        all.add(jobs.job(
                "set",
                "set",
                "set --type jet180 -f 5 -g 24.5% --write {}/s.html",
                "set --type jet180 -f 5" + " -g 25.5% --write {}/s.html"));
        all.add(jobs.job(
                "curtail",
                "curtail",
                "curtail jet180 --page {}/p.html",
                "curtail jet180 --deviations 1 --page {}/p.html"));
        all.add(jobs.job(
                "estimate-scale",
                "estimate",
                "estimate-scale single4 --section {}/t.yaml",
                "estimate-scale single4 --section {}/t.yaml"));
        all.add(jobs.job(
                "propose-map",
                "map",
                "propose-map " + one + "/season-one.csv --write {}/m.yaml --force",
                "propose-map " + two + "/season-two.csv --write {}/m.yaml --force"));
        all.add(jobs.job(
                "check-config", "types", "check-config --brief --write {}", "check-config --brief --write {}"));
        return List.copyOf(all);
    }

    private Job job(String name, String folder, String first, String second) {
        Path into = out.resolve(folder);
        return new Job(
                name,
                into,
                List.of(
                        List.of(first.replace("{}", into.toString()).split(" ")),
                        List.of(second.replace("{}", into.toString()).split(" "))));
    }

    private Path season(String name, String demo, Charset charset, int from, int rows) throws IOException {
        Path folder = Files.createDirectories(in.resolve(name));
        List<String> lines = Files.readAllLines(DEMO.resolve(demo), charset);
        List<String> some = new ArrayList<>(List.of(lines.get(0)));
        some.addAll(lines.subList(from, Math.min(lines.size(), from + rows)));
        Files.write(folder.resolve("season-" + name + ".csv"), some, charset);
        List<String> sheets = Files.readAllLines(Path.of("data-in/class/sheets.csv"), StandardCharsets.UTF_8);
        Files.write(in.resolve("some.csv"), sheets.subList(0, 20), StandardCharsets.UTF_8);
        return folder;
    }
}
