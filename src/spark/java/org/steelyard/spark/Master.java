package org.steelyard.spark;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.spark.SparkConf;

/**
 * Which machines do the work, as Spark names them.
 *
 * @param address the name
 * @param saidBy what it was given with
 */
record Master(String address, String saidBy) {

    private static final Pattern LOCAL = Pattern.compile("local(\\[(\\*|[1-9]\\d{0,3})(, ?[1-9]\\d{0,3})?])?");
    private static final Pattern OTHERS = Pattern.compile("yarn|k8s://.+|local-cluster\\[.+]");
    private static final Pattern HOST = Pattern.compile("(.+):(\\d{1,5})");
    private static final List<String> TAKEN_ALONG =
            List.of("spark.submit.deployMode", "spark.jars", "spark.executor.extraClassPath");
    private static final String STANDALONE = "spark://";
    private static final int MOST_PORT = 65_535;
    private static final int WAIT_MS = 5_000;

    /** Whether this machine does all the work. */
    boolean isLocal() {
        return LOCAL.matcher(address).matches();
    }

    /**
     * Refuses what Spark would not understand, and a master at whose address nothing listens: Spark itself would wait
     * for it for minutes.
     */
    void require() throws InputRefused {
        if (address.startsWith(STANDALONE)) {
            List<String> hosts = List.of(address.substring(STANDALONE.length()).split(",", -1));
            for (String host : hosts) {
                if (!HOST.matcher(host).matches() || port(host) > MOST_PORT) {
                    throw unknown();
                }
            }
            if (hosts.stream().noneMatch(Master::answers)) {
                throw new InputRefused(saidBy + ": nothing answers at " + address
                        + "; expected the address of a master that is running");
            }
        } else if (!isLocal() && !OTHERS.matcher(address).matches()) {
            throw unknown();
        }
    }

    /** Refuses other machines where nothing takes the program to them. */
    void requireTakenAlong(SparkConf settings) throws InputRefused {
        if (!isLocal() && TAKEN_ALONG.stream().noneMatch(settings::contains)) {
            throw new InputRefused(saidBy + ": only spark-submit takes the program to the machines of " + address
                    + " (src/spark/README.md has the line); without it, local[*] or local[2] can be named");
        }
    }

    private InputRefused unknown() {
        return new InputRefused(saidBy + ": '" + address + "' names no machines; expected local[*] for all cores of this"
                + " one, local[2] for two of them, spark://HOST:PORT, yarn or k8s://ADDRESS");
    }

    private static int port(String host) {
        return Integer.parseInt(host.substring(host.lastIndexOf(':') + 1));
    }

    private static boolean answers(String host) {
        String name = host.substring(0, host.lastIndexOf(':'));
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(name, port(host)), WAIT_MS);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
