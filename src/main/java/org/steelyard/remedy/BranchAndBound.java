package org.steelyard.remedy;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import org.steelyard.model.unit.Amounts;

/**
 * The least cost of a linear program with whole numbers, by branch and bound (Land and Doig 1960), the node of least
 * bound first, so that the first solution with whole numbers is the least. If the search grows beyond a number of
 * nodes, it goes on depth first from the best, and what it finds then is marked as not proved to be least.
 */
final class BranchAndBound {

    /** Far more than any flight of the demo season or of a drawn aircraft needs; holds the time for one flight. */
    static final int NODES = 3000;

    private static final double WHOLE = 1e-6;

    /**
     * A solution.
     *
     * @param values the unknowns
     * @param proved whether no other costs less
     */
    record Solution(Amounts values, double cost, boolean proved) {}

    private record Node(DualSimplex simplex, double cost, int depth, int order) {}

    private static final Comparator<Node> LEAST_FIRST = Comparator.comparingDouble(Node::cost)
            .thenComparing(Node::depth, Comparator.reverseOrder())
            .thenComparing(Node::order);
    private static final Comparator<Node> DEEPEST_FIRST =
            Comparator.comparing(Node::depth, Comparator.reverseOrder()).thenComparing(LEAST_FIRST);

    private final LinearProgram program;
    private PriorityQueue<Node> open = new PriorityQueue<>(LEAST_FIRST);
    private boolean proved = true;
    private int made;

    private BranchAndBound(LinearProgram program) {
        this.program = program;
    }

    /**
     * Searches.
     *
     * @return the least; empty if no whole numbers satisfy all rows
     */
    static Optional<Solution> least(LinearProgram program) {
        return new BranchAndBound(program).run();
    }

    private Optional<Solution> run() {
        add(new DualSimplex(program), 0);
        int taken = 0;
        while (!open.isEmpty()) {
            if (++taken == NODES) {
                proved = false;
                PriorityQueue<Node> deepest = new PriorityQueue<>(DEEPEST_FIRST);
                deepest.addAll(open);
                open = deepest;
            }
            if (taken > 2 * NODES) {
                return Optional.empty();
            }
            Node node = open.remove();
            double[] values = node.simplex().values();
            int broken = mostBroken(values);
            if (broken < 0) {
                return Optional.of(new Solution(Amounts.of(rounded(values)), node.cost(), proved));
            }
            branch(node, broken, values[broken]);
        }
        return Optional.empty();
    }

    private void branch(Node node, int unknown, double value) {
        DualSimplex below = node.simplex().copy();
        below.bound(unknown, 0, Math.floor(value));
        add(below, node.depth() + 1);
        DualSimplex above = node.simplex();
        above.bound(unknown, Math.ceil(value), Double.POSITIVE_INFINITY);
        add(above, node.depth() + 1);
    }

    private void add(DualSimplex simplex, int depth) {
        boolean solved = simplex.solve();
        proved = proved && !simplex.gaveUp();
        if (solved) {
            double cost = 0;
            double[] values = simplex.values();
            for (int j = 0; j < values.length; j++) {
                cost += values[j] * program.cost(j);
            }
            open.add(new Node(simplex, cost, depth, made++));
        }
    }

    private int mostBroken(double[] values) {
        int broken = -1;
        double most = WHOLE;
        for (int j = 0; j < values.length; j++) {
            double off = Math.abs(values[j] - Math.rint(values[j]));
            if (program.whole(j) && off > most) {
                most = off;
                broken = j;
            }
        }
        return broken;
    }

    private double[] rounded(double[] values) {
        for (int j = 0; j < values.length; j++) {
            if (program.whole(j)) {
                values[j] = Math.rint(values[j]);
            }
        }
        return values;
    }
}
