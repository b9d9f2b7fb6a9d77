package org.shedboard.pack.numbers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shedboard.pack.Problem;
import org.shedboard.pack.Span;

/**
 * One person's windows, with wall minutes numbered through to working minutes and back, so that breaks and nights vanish from the
 * search: a task's work is one run of working minutes, whatever windows it spans.
 *
 * <p>After the horizon comes one endless window. Nothing may end there, but work that does not fit runs into it and tells by how
 * much it does not fit.
 */
public final class Hours {
    /** Later than any minute of a plan; far enough from overflow to add a few durations. */
    public static final int FAR = 1 << 29;

    /** Three days have a bucket a minute, so that a look-up takes no search. */
    private static final int MOST_BUCKETS = 8192;

    private final int[] from;
    private final int[] to;
    /** Working minutes before each window. */
    private final int[] worked;
    /** Overtime minutes before each window. */
    private final int[] extraBefore;

    private final boolean[] isExtra;
    private final int shift;
    /** First window that ends after the bucket's first wall minute. */
    private final char[] windowByWall;
    /** First window that ends after the bucket's first working minute. */
    private final char[] windowByWork;

    private Hours(List<Window> windows, int horizon) {
        int count = windows.size();
        from = new int[count];
        to = new int[count];
        worked = new int[count];
        extraBefore = new int[count];
        isExtra = new boolean[count];
        fill(windows);
        shift = shiftFor(horizon);
        windowByWall = new char[(horizon >> shift) + 1];
        windowByWork = new char[(worked[count - 1] >> shift) + 1];
        index();
    }

    public static Hours of(Problem.Person person, int horizon) {
        List<Window> windows = new ArrayList<>();
        person.shifts().forEach(span -> Window.addTo(windows, span, false, horizon));
        person.overtime().forEach(span -> Window.addTo(windows, span, true, horizon));
        windows.sort(Comparator.comparingInt(Window::from));
        windows.add(new Window(horizon, Integer.MAX_VALUE, false));
        return new Hours(windows, horizon);
    }

    private record Window(int from, int to, boolean extra) {
        static void addTo(List<Window> windows, Span span, boolean extra, int horizon) {
            int end = Math.min(span.to(), horizon);
            if (span.from() < end) {
                windows.add(new Window(span.from(), end, extra));
            }
        }
    }

    private void fill(List<Window> windows) {
        int sum = 0;
        int extra = 0;
        for (int i = 0; i < from.length; i++) {
            Window window = windows.get(i);
            from[i] = window.from;
            to[i] = window.to;
            isExtra[i] = window.extra;
            worked[i] = sum;
            extraBefore[i] = extra;
            sum += window.to - window.from;
            extra += window.extra ? window.to - window.from : 0;
        }
    }

    private static int shiftFor(int horizon) {
        int shift = 0;
        while (horizon >> shift >= MOST_BUCKETS) {
            shift++;
        }
        return shift;
    }

    private void index() {
        for (int bucket = 0; bucket < windowByWall.length; bucket++) {
            int window = bucket == 0 ? 0 : windowByWall[bucket - 1];
            while (to[window] <= bucket << shift) {
                window++;
            }
            windowByWall[bucket] = (char) window;
        }
        for (int bucket = 0; bucket < windowByWork.length; bucket++) {
            int window = bucket == 0 ? 0 : windowByWork[bucket - 1];
            while (endWorked(window) <= bucket << shift) {
                window++;
            }
            windowByWork[bucket] = (char) window;
        }
    }

    private int endWorked(int window) {
        return window + 1 < worked.length ? worked[window + 1] : Integer.MAX_VALUE;
    }

    /** Working minutes before a wall minute. */
    public int worked(int wall) {
        int bucket = wall >> shift;
        int window = bucket < windowByWall.length ? windowByWall[bucket] : from.length - 1;
        while (to[window] <= wall) {
            window++;
        }
        return wall <= from[window] ? worked[window] : worked[window] + wall - from[window];
    }

    private int windowOf(int work) {
        int bucket = work >> shift;
        int window = bucket < windowByWork.length ? windowByWork[bucket] : from.length - 1;
        while (endWorked(window) <= work) {
            window++;
        }
        return window;
    }

    /** The wall minute at which a working minute begins. */
    public int wall(int work) {
        int window = windowOf(work);
        return from[window] + work - worked[window];
    }

    /** The wall minute at which so many working minutes are over. */
    public int end(int work) {
        return wall(work - 1) + 1;
    }

    /** Overtime minutes among the first so many working minutes. */
    public int overtimeBefore(int work) {
        int window = windowOf(work);
        return extraBefore[window] + (isExtra[window] ? work - worked[window] : 0);
    }

    /** The first working minute from {@code work} on from which {@code minutes} touch no overtime. */
    public int pastOvertime(int work, int minutes) {
        int first = work;
        for (int window = windowOf(work); window < worked.length && worked[window] < first + minutes; window++) {
            if (isExtra[window]) {
                first = endWorked(window);
            }
        }
        return first;
    }
}
