package org.steelyard.report.file;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A process that writes when it is told to, for locks keep processes apart, not threads. Each line that it reads is a
 * kind of round, how many microseconds to wait, and a place; it answers {@code taken}, {@code done}, {@code refused} or
 * {@code fault} with the message.
 */
final class Racer {

    static final List<String> NAMES = List.of("flights.csv", "season.xlsx", "students/1.html");

    private Racer() {}

    /** What a racer is told to do. */
    enum Round {
        /** Take the folder and keep it until the next line. */
        HOLD,
        /** Write the folder as quickly as it goes. */
        WRITE,
        /** Take the folder and leave it without a file. */
        LEAVE,
        /** Write a single file. */
        FILE
    }

    public static void main(String[] args) throws IOException {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            String[] told = line.split(" ", 3);
            try {
                TimeUnit.MICROSECONDS.sleep(Long.parseLong(told[1]));
                race(Round.valueOf(told[0]), Path.of(told[2]), args[0], in);
            } catch (IOException e) {
                answer("refused " + e.getMessage());
            } catch (InterruptedException | RuntimeException e) {
                answer("fault " + e);
            }
        }
    }

    private static void race(Round round, Path place, String me, BufferedReader in) throws IOException {
        Destination to = new Destination(place, List.of(), true);
        if (round == Round.FILE) {
            WholeFile.write(to, me);
        } else {
            try (StagedFolder staged = StagedFolder.at(to)) {
                for (String name : NAMES) {
                    Files.writeString(staged.file(name), me, StandardCharsets.UTF_8);
                }
                if (round == Round.HOLD) {
                    answer("taken");
                    in.readLine();
                }
                if (round != Round.LEAVE) {
                    staged.publish();
                }
            }
        }
        answer("done");
    }

    private static void answer(String said) {
        System.out.println(said);
        System.out.flush();
    }
}
