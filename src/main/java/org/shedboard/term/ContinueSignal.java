package org.shedboard.term;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandleProxies;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;

/**
 * The signal that a stopped program gets when it goes on. There is no supported way to hear of it, hence the reflection:
 * where it does not work, the foreman presses Ctrl-L.
 */
final class ContinueSignal {
    private ContinueSignal() {}

    /** Runs the action each time; tells whether that can be promised. */
    static boolean onContinue(Runnable action) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object continues = signal.getConstructor(String.class).newInstance("CONT");
            signal.getMethod("handle", signal, handler).invoke(null, continues, handling(handler, signal, action));
            return true;
        } catch (ReflectiveOperationException | IllegalArgumentException noSuchSignal) {
            return false;
        }
    }

    private static Object handling(Class<?> handler, Class<?> signal, Runnable action)
            throws ReflectiveOperationException {
        MethodHandle run = MethodHandles.lookup().bind(action, "run", MethodType.methodType(void.class));
        return MethodHandleProxies.asInterfaceInstance(handler, MethodHandles.dropArguments(run, 0, signal));
    }
}
