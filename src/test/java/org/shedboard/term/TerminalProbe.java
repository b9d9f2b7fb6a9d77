package org.shedboard.term;

import java.io.IOException;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.shedboard.grid.Canvas;
import org.shedboard.grid.Grid;
import org.shedboard.grid.Size;
import org.shedboard.grid.Style;
import org.shedboard.look.Scheme;

/** A program that shows the size of its window and what happened last; Ctrl-Q ends it, Ctrl-X breaks it. */
final class TerminalProbe {
    private TerminalProbe() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        if (!Display.isUsable()) {
            System.out.println("no full screen here");
            return;
        }
        BlockingQueue<Event> events = new LinkedBlockingQueue<>();
        try (Display display = Display.open(Scheme.DARK, true)) {
            display.listen(events::add);
            String last = "none";
            while (!last.contains("CONTROL q")) {
                display.show(drawn(display.size(), last));
                last = said(events.take());
                if (last.contains("CONTROL x")) throw new IllegalStateException("broken on purpose");
            }
        }
        System.out.println("ended well");
    }

    private static String said(Event event) {
        if (event instanceof Event.Pressed pressed)
            return pressed.key().kind() + " " + pressed.key().character() + " pressed";
        return event.getClass().getSimpleName();
    }

    private static Grid drawn(Size size, String last) {
        Canvas canvas = Canvas.of(size);
        var inside = canvas.frame(canvas.region(), Style.FRAME);
        canvas.text(inside, "window of " + size.columns() + " x " + size.rows(), Style.NORMAL);
        canvas.text(inside, 1, "last: " + last, Style.LATE);
        canvas.textRight(inside.row(2), "日本 ✅ \033[2Jend", Style.NORMAL);
        return canvas.grid();
    }
}
