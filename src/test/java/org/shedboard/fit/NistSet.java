package org.shedboard.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.shedboard.testing.Reference;

/** A set of the NIST Statistical Reference Datasets for linear regression: the rows of its model, its values and what is certified of it. */
record NistSet(String name, int firstPower, double[][] design, double[] values) {
    /** A polynomial with powers of x between two, both included. */
    static NistSet polynomial(String name, int from, int to) throws IOException {
        double[][] data = numbers(name);
        return new NistSet(name, from, powers(data, from, to), values(data));
    }

    /** A constant and all columns as they stand. */
    static NistSet columns(String name) throws IOException {
        double[][] data = numbers(name);
        double[][] design = new double[data.length][];
        for (int row = 0; row < data.length; row++) {
            design[row] = data[row].clone();
            design[row][0] = 1;
        }
        return new NistSet(name, 0, design, values(data));
    }

    /** What is certified of one coefficient, or of the residual. */
    record Certified(String what, double value, double sd) {}

    List<Certified> coefficients() throws IOException {
        List<Certified> all = certified().stream()
                .filter(row -> row.get(2).startsWith("B"))
                .map(row -> new Certified(row.get(2), Double.parseDouble(row.get(3)), Double.parseDouble(row.get(4))))
                .toList();
        assertTrue(all.size() == design[0].length, "not every coefficient of " + name + " is certified");
        return all;
    }

    double residualSd() throws IOException {
        return certified().stream()
                .filter(row -> row.get(2).equals("residual_sd"))
                .mapToDouble(row -> Double.parseDouble(row.get(3)))
                .findFirst()
                .orElseThrow();
    }

    private List<List<String>> certified() throws IOException {
        return Reference.rows("nist-strd/certified-linear.csv").stream()
                .filter(row -> row.get(0).equals(name))
                .toList();
    }

    int columnOf(Certified coefficient) {
        return Integer.parseInt(coefficient.what().substring(1)) - firstPower;
    }

    static double[][] powers(double[][] data, int from, int to) {
        double[][] design = new double[data.length][];
        for (int row = 0; row < data.length; row++) {
            double x = data[row][1];
            design[row] = IntStream.rangeClosed(from, to)
                    .mapToDouble(power -> power(x, power))
                    .toArray();
        }
        return design;
    }

    private static double power(double x, int power) {
        double product = 1;
        for (int i = 0; i < power; i++) {
            product *= x;
        }
        return product;
    }

    static double[] values(double[][] data) {
        double[] values = new double[data.length];
        for (int row = 0; row < data.length; row++) {
            values[row] = data[row][0];
        }
        return values;
    }

    private static double[][] numbers(String set) throws IOException {
        return Reference.rows("nist-strd/" + set + ".csv").stream()
                .map(row -> row.stream().mapToDouble(Double::parseDouble).toArray())
                .toArray(double[][]::new);
    }

    static void assertDigits(double digits, double certified, double reached) {
        double right = -Math.log10(Math.abs(reached - certified) / Math.abs(certified));
        assertTrue(right >= digits, "%s has %.1f digits of %s".formatted(reached, right, certified));
    }
}
