package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.cli.WritingJobs.Job;
import org.steelyard.cli.option.ExitCode;

/** Every command that writes, where it cannot: what stood there stays, nothing is left, the message says what to do. */
class WritingFaultsIT {

    @TempDir
    private static Path folder;

    private static List<Job> jobs;

    private final StringWriter said = new StringWriter();

    @BeforeAll
    static void make() throws IOException {
        jobs = WritingJobs.all(folder.resolve("in"), folder.resolve("out"));
    }

    private int run(List<String> args) {
        said.getBuffer().setLength(0);
        return Main.run(new PrintWriter(said, true), new PrintWriter(said, true), args.toArray(String[]::new));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aPlaceThatIsTakenByAFolderOrAReadOnlyFileIsNamed() throws IOException {
        for (Job job : jobs) {
            assertThat(run(job.variants().get(0))).as(said.toString()).isZero();
            Map<String, String> before = Snapshot.seen(job.folder());
            List<String> names = before.keySet().stream().limit(1).toList();
            for (String name : names) {
                Path file = job.folder().resolve(name);
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
                refused(job, file, "the file there is read-only; make it writable or move it away");
                assertThat(Snapshot.seen(job.folder())).as(job.name()).isEqualTo(before);

                Path aside = folder.resolve("aside");
                Files.move(file, aside);
                Files.createDirectory(file);
                refused(job, file, "a folder stands where the file is to be; move it away");
                Files.delete(file);
                Files.move(aside, file);
                Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
                assertThat(Snapshot.seen(job.folder())).as(job.name()).isEqualTo(before);
            }
            assertThat(run(job.variants().get(0))).as(said.toString()).isZero();
        }
    }

    private void refused(Job job, Path file, String why) throws IOException {
        assertThat(run(job.variants().get(1))).as(job + ": " + said).isEqualTo(ExitCode.CANNOT);
        assertThat(said.toString())
                .contains("cannot be written to ")
                .contains(why)
                .contains(file.getFileName().toString())
                .contains("What stood there before is as it was.")
                .doesNotContain("Exception");
        assertThat(Snapshot.hidden(job.folder())).as(job.name()).isEmpty();
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("a-file"), "mine");
        for (Job job : WritingJobs.all(folder.resolve("in"), file)) {
            assertThat(run(job.variants().get(0))).as(job.name()).isEqualTo(ExitCode.CANNOT);
            assertThat(said.toString())
                    .contains("cannot be written to ")
                    .contains("a file stands where a folder is needed; move it away")
                    .doesNotContain("Exception");
        }
        assertThat(file).hasContent("mine");
    }

    /** The system stops each file at so many blocks, as a full disk does; the program runs on its own. */
    @ParameterizedTest
    @CsvSource({"0", "200"})
    @DisabledOnOs(OS.WINDOWS)
    void whereAFileCannotGrowWhatStoodThereStays(int blocks) throws Exception {
        Job audit = jobs.get(0);
        assertThat(run(audit.variants().get(1))).isZero();
        Map<String, String> before = Snapshot.seen(audit.folder());
        String output = child(blocks, "", audit.variants().get(0));
        assertThat(output)
                .contains("a file grew larger than this disk or your account may have")
                .contains("What stood there before is as it was.")
                .endsWith("exit 2\n");
        assertThat(Snapshot.seen(audit.folder())).isEqualTo(before);
        assertThat(run(audit.variants().get(0))).isZero();
        assertThat(Snapshot.hidden(audit.folder())).isEmpty();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLackOfMemoryEndsWithAMessageThatSaysWhatToDo() throws Exception {
        Job audit = jobs.get(0);
        assertThat(run(audit.variants().get(1))).isZero();
        Map<String, String> before = Snapshot.seen(audit.folder());
        String output = child(-1, "-Xmx12m", audit.variants().get(0));
        assertThat(output)
                .contains("There is not enough memory: the program may use ")
                .contains("JDK_JAVA_OPTIONS=-Xmx2g")
                .endsWith("exit 2\n");
        assertThat(Snapshot.seen(audit.folder())).isEqualTo(before);
        assertThat(run(audit.variants().get(0))).isZero();
        assertThat(Snapshot.hidden(audit.folder())).isEmpty();
    }

    private static String child(int blocks, String option, List<String> args) throws Exception {
        String limit = blocks < 0 ? "" : "ulimit -f " + blocks + "; ";
        List<String> command = new ArrayList<>(List.of(
                "sh",
                "-c",
                limit + "\"$@\"; echo exit $?",
                "sh",
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:-UsePerfData",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                option.isEmpty() ? "-Xmx400m" : option,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(args);
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return output;
    }

    /**
     * A disk that is really full. {@code -Dsteelyard.smallDisk=FOLDER} names an empty file system of some MB, as
     * {@code mount -t tmpfs -o size=12m tmpfs FOLDER} makes one; each command is run with ever less room on it.
     */
    @Test
    void onAFullDiskWhatStoodThereStays() throws IOException {
        String disk = System.getProperty("steelyard.smallDisk", "");
        if (disk.isEmpty()) {
            System.err.println("SKIPPED: no full disk to be had (-Dsteelyard.smallDisk=FOLDER, a small file system)");
            abort("no small file system was named");
        }
        Path full = Path.of(disk);
        Map<String, Integer> met = new TreeMap<>();
        for (Job job : WritingJobs.all(folder.resolve("in"), full.resolve("out"))) {
            assertThat(run(job.variants().get(0))).as(said.toString()).isZero();
            Map<String, String> first = Snapshot.seen(job.folder());
            for (int leftKb = 0; leftKb <= 1024; leftKb = leftKb == 0 ? 4 : leftKb * 2) {
                fill(full, leftKb);
                int exitCode = run(job.variants().get(1));
                met.merge("exit " + exitCode, 1, Integer::sum);
                if (exitCode != 0) {
                    assertThat(exitCode).as(said.toString()).isEqualTo(ExitCode.CANNOT);
                    assertThat(said.toString()).contains("the disk is full; free some space there");
                    assertThat(Snapshot.seen(job.folder()))
                            .as(job + " with " + leftKb)
                            .isEqualTo(first);
                }
                assertThat(Snapshot.hidden(job.folder()))
                        .as(job + " with " + leftKb)
                        .isEmpty();
                Files.deleteIfExists(full.resolve("ballast"));
                assertThat(run(job.variants().get(0))).as(said.toString()).isZero();
                assertThat(Snapshot.seen(job.folder())).as(job.name()).isEqualTo(first);
            }
        }
        System.out.println("full disk: " + met);
        assertThat(met).containsKeys("exit 0", "exit 2");
    }

    /** A disk with room, but for so many files only; it takes the right to mount one. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aDiskWithoutRoomForMoreFilesIsNoFaultOfTheProgram(@TempDir Path disk) throws Exception {
        if (!succeeds("mount", "-t", "tmpfs", "-o", "size=64m,nr_inodes=48", "tmpfs", disk.toString())) {
            System.err.println("SKIPPED: a small file system cannot be mounted here");
            abort("nothing can be mounted");
        }
        try {
            Job audit =
                    WritingJobs.all(folder.resolve("in"), disk.resolve("out")).get(0);
            assertThat(run(audit.variants().get(0))).as(said.toString()).isZero();
            Map<String, String> first = Snapshot.seen(audit.folder());
            int ballast = 0;
            for (; ballast < 20; ballast++) {
                Files.createFile(disk.resolve("ballast" + ballast));
            }
            Set<String> places = new HashSet<>();
            for (; ballast < 48; ballast++) {
                try {
                    Files.createFile(disk.resolve("ballast" + ballast));
                } catch (IOException full) {
                    break;
                }
                int exitCode = run(audit.variants().get(0));
                if (exitCode != ExitCode.FINISHED) {
                    assertThat(exitCode).as(said.toString()).isEqualTo(ExitCode.CANNOT);
                    assertThat(said.toString())
                            .contains("the disk has room for no more files; remove some there (" + audit.folder());
                    places.add(said.toString().replaceFirst("(?s).*/(.*)\\).*", "$1"));
                }
                assertThat(Snapshot.seen(audit.folder()))
                        .as(ballast + " more files")
                        .isEqualTo(first);
                assertThat(Snapshot.hidden(audit.folder())).isEmpty();
            }
            assertThat(places).contains(".writing", "lock", "flights.csv");
        } finally {
            assertThat(succeeds("umount", "--lazy", disk.toString())).isTrue();
        }
    }

    private static boolean succeeds(String... command) throws Exception {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static void fill(Path disk, int leftKb) throws IOException {
        FileStore store = Files.getFileStore(disk);
        byte[] block = new byte[4096];
        try (OutputStream out = Files.newOutputStream(disk.resolve("ballast"))) {
            while (store.getUsableSpace() > leftKb * 1024L) {
                out.write(block);
            }
        } catch (IOException e) {
            assertThat(leftKb).as(e.toString()).isZero();
        }
    }
}
