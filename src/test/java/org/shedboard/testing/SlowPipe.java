package org.shedboard.testing;

import java.io.IOException;

/** A slow line: passes on what is piped in, so many bytes a second and no more. */
public final class SlowPipe {
    private static final int PIECES_A_SECOND = 50;

    private SlowPipe() {}

    /** @param arguments bytes a second */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        byte[] piece = new byte[Integer.parseInt(arguments[0]) / PIECES_A_SECOND];
        for (int count = System.in.read(piece); count >= 0; count = System.in.read(piece)) {
            System.out.write(piece, 0, count);
            System.out.flush();
            Thread.sleep(1_000 / PIECES_A_SECOND);
        }
    }
}
