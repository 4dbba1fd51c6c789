package rainlap.paper;

import java.util.Arrays;

/**
 * Assigns each row of a table a column of its own at least total cost: the Hungarian method with potentials (Kuhn,
 * Munkres), in the form that grows one shortest path for each row. Time rows squared times columns.
 */
final class LeastAssignment {

    private final double[][] cost;
    private final int columns;
    private final double[] rowPotential;
    private final double[] columnPotential;
    /** Row that holds each column, counted from 1; column 0 holds the row being placed. */
    private final int[] holder;
    private final int[] previous;

    private LeastAssignment(double[][] cost) {
        this.cost = cost;
        columns = cost.length == 0 ? 0 : cost[0].length;
        rowPotential = new double[cost.length + 1];
        columnPotential = new double[columns + 1];
        holder = new int[columns + 1];
        previous = new int[columns + 1];
    }

    /** The column of each row. There must be at least as many columns as rows, and costs must be finite. */
    static int[] of(double[][] cost) {
        LeastAssignment table = new LeastAssignment(cost);
        if (table.columns < cost.length) {
            throw new IllegalArgumentException(cost.length + " rows cannot share " + table.columns + " columns");
        }
        for (int row = 1; row <= cost.length; row++) {
            table.place(row);
        }
        int[] columnOf = new int[cost.length];
        for (int column = 1; column <= table.columns; column++) {
            if (table.holder[column] > 0) {
                columnOf[table.holder[column] - 1] = column - 1;
            }
        }
        return columnOf;
    }

    private void place(int row) {
        holder[0] = row;
        double[] slack = new double[columns + 1];
        boolean[] done = new boolean[columns + 1];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        int column = 0;
        do {
            done[column] = true;
            column = nearest(column, slack, done);
        } while (holder[column] != 0);
        while (column != 0) {
            holder[column] = holder[previous[column]];
            column = previous[column];
        }
    }

    /** Relaxes from a column, shifts the potentials by the least slack and returns the column that has it. */
    private int nearest(int from, double[] slack, boolean[] done) {
        int row = holder[from];
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int column = 1; column <= columns; column++) {
            if (done[column]) {
                continue;
            }
            double reduced = cost[row - 1][column - 1] - rowPotential[row] - columnPotential[column];
            if (reduced < slack[column]) {
                slack[column] = reduced;
                previous[column] = from;
            }
            if (slack[column] < least) {
                least = slack[column];
                best = column;
            }
        }
        for (int column = 0; column <= columns; column++) {
            if (done[column]) {
                rowPotential[holder[column]] += least;
                columnPotential[column] -= least;
            } else {
                slack[column] -= least;
            }
        }
        return best;
    }
}
