package org.steelyard.spark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.WriteFault;

/** Says in plain words what kept the audit from its work, wherever on the way of Spark it came from. */
final class RunFault {

    private static final int CANNOT = 2;
    private static final int OUR_FAULT = 3;
    private static final String SPARK = "org.apache.spark.";

    private RunFault() {}

    /** Tells it, and hands back the exit code. */
    static int tell(Exception fault, PrintWriter err) {
        Optional<InputRefused> refused = first(InputRefused.class, fault);
        if (refused.isPresent()) {
            err.println(refused.get().getMessage());
            return CANNOT;
        }
        Optional<SeasonUnreadableException> unreadable = first(SeasonUnreadableException.class, fault);
        if (unreadable.isPresent()) {
            unreadable.get().problems().stream().map(InputProblem::message).forEach(err::println);
            return CANNOT;
        }
        Optional<IOException> disk = first(IOException.class, fault);
        if (disk.isPresent()) {
            err.println("The season cannot be read or its reports not be written: " + why(disk.get())
                    + ". What stood there before is as it was.");
            return CANNOT;
        }
        if (chain(fault).stream().allMatch(one -> one.getClass().getName().startsWith(SPARK))) {
            err.println("Spark ended the work: " + firstLine(fault) + ". Reports of an earlier run are as they were.");
            return CANNOT;
        }
        err.println("This is a fault of the program, not of your files. Please report it with what follows.");
        fault.printStackTrace(err);
        return OUR_FAULT;
    }

    static int withoutSpark(PrintWriter err) {
        err.println("Spark is not here: spark-submit starts this command, or mvn -q -Pspark compile exec:java. Without"
                + " Spark, java -jar steelyard.jar audit does the same on one machine.");
        return CANNOT;
    }

    /** Spark's messages go on with where it was. */
    static String firstLine(Throwable fault) {
        return String.valueOf(fault.getMessage()).lines().findFirst().orElse("").replaceFirst("\\.$", "");
    }

    private static String why(IOException e) {
        return e instanceof FileSystemException ? WriteFault.of(e) : firstLine(e);
    }

    private static <T extends Throwable> Optional<T> first(Class<T> kind, Throwable fault) {
        return chain(fault).stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    private static List<Throwable> chain(Throwable fault) {
        List<Throwable> chain = new ArrayList<>();
        for (Throwable one = fault; one != null && !chain.contains(one); one = one.getCause()) {
            chain.add(one);
        }
        return chain;
    }
}
