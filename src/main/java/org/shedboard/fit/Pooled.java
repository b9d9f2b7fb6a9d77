package org.shedboard.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Figures that must not fall, made so with the least change: neighbours that fall are pooled into their weighted mean until none do
 * (pool adjacent violators; M. Ayer and others, Annals of Mathematical Statistics 26, 1955).
 */
public final class Pooled {
    private Pooled() {}

    private record Block(double mean, double weight, int size) {
        Block with(Block next) {
            double all = weight + next.weight;
            return new Block((mean * weight + next.mean * next.weight) / all, all, size + next.size);
        }
    }

    /** The figures in their order, none smaller than the one before; their weights are positive. */
    public static double[] rising(double[] figures, double[] weights) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            Block block = new Block(figures[i], weights[i], 1);
            while (!blocks.isEmpty() && last(blocks).mean() > block.mean()) {
                block = blocks.remove(blocks.size() - 1).with(block);
            }
            blocks.add(block);
        }
        return spread(blocks, figures.length);
    }

    private static Block last(List<Block> blocks) {
        return blocks.get(blocks.size() - 1);
    }

    private static double[] spread(List<Block> blocks, int length) {
        double[] rising = new double[length];
        int at = 0;
        for (Block block : blocks) {
            for (int i = 0; i < block.size(); i++) {
                rising[at++] = block.mean();
            }
        }
        return rising;
    }
}
