package org.shedboard.pack.numbers;

import java.util.ArrayList;
import java.util.Arrays;
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

    /** So many minutes, six weeks, stand in tables; whatever is later is searched for. */
    private static final int MOST_IN_TABLES = 6 * 7 * 24 * 60;

    private final int[] from;
    private final int[] to;
    /** Working minutes before each window. */
    private final int[] worked;
    /** Overtime minutes before each window. */
    private final int[] extraBefore;

    private final boolean[] isExtra;
    /** Per wall minute the working minutes before it. */
    private final char[] workedByWall;
    /** Per working minute the wall minute at which it begins. */
    private final char[] wallByWork;
    /** Per working minute the overtime minutes before it. */
    private final char[] extraByWork;

    private Hours(List<Window> windows, int horizon) {
        int count = windows.size();
        from = new int[count];
        to = new int[count];
        worked = new int[count];
        extraBefore = new int[count];
        isExtra = new boolean[count];
        fill(windows);
        workedByWall = new char[Math.min(horizon, MOST_IN_TABLES)];
        wallByWork = new char[searchWorked(workedByWall.length)];
        extraByWork = new char[wallByWork.length];
        fillTables();
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

    private void fillTables() {
        for (int window = 0; window < from.length - 1 && from[window] < MOST_IN_TABLES; window++) {
            int end = Math.min(to[window], MOST_IN_TABLES);
            int work = worked[window];
            for (int wall = from[window]; wall < end; wall++) {
                workedByWall[wall] = (char) work;
                wallByWork[work] = (char) wall;
                extraByWork[work] = (char) (extraBefore[window] + (isExtra[window] ? work - worked[window] : 0));
                work++;
            }
            int next = Math.min(from[window + 1], workedByWall.length);
            Arrays.fill(workedByWall, Math.min(end, next), next, (char) work);
        }
    }

    /** Working minutes before a wall minute. */
    public int worked(int wall) {
        return wall < workedByWall.length ? workedByWall[wall] : searchWorked(wall);
    }

    private int searchWorked(int wall) {
        int window = lastFrom(from, wall);
        return window < 0 ? 0 : worked[window] + Math.min(wall, to[window]) - from[window];
    }

    /** The wall minute at which a working minute begins. */
    public int wall(int work) {
        return work < wallByWork.length ? wallByWork[work] : searchWall(work);
    }

    private int searchWall(int work) {
        int window = lastFrom(worked, work);
        return from[window] + work - worked[window];
    }

    /** The wall minute at which so many working minutes are over. */
    public int end(int work) {
        return wall(work - 1) + 1;
    }

    /** Overtime minutes among the first so many working minutes. */
    public int overtimeBefore(int work) {
        return work < extraByWork.length ? extraByWork[work] : searchOvertime(work);
    }

    private int searchOvertime(int work) {
        int window = lastFrom(worked, work);
        return extraBefore[window] + (isExtra[window] ? work - worked[window] : 0);
    }

    /** The first working minute from {@code work} on from which {@code minutes} touch no overtime. */
    public int pastOvertime(int work, int minutes) {
        int first = work;
        for (int window = lastFrom(worked, work);
                window < worked.length && worked[window] < first + minutes;
                window++) {
            if (isExtra[window]) {
                first = worked[window + 1];
            }
        }
        return first;
    }

    /** The last window that begins at the minute or before it; -1 when none does. */
    private static int lastFrom(int[] begins, int minute) {
        int found = Arrays.binarySearch(begins, minute);
        return found >= 0 ? found : -found - 2;
    }
}
