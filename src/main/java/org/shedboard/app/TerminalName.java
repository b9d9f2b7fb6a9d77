package org.shedboard.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * What a program that changes records is called in their journal: what it is, on which machine, and what tells it apart from all others
 * there that run at the same time.
 *
 * @param machine empty where the machine does not say what it is called
 */
record TerminalName(String kind, String machine, String process) {
    /** Where Linux says what a machine is called; asking the network for it may take long where there is none. */
    private static final Path HOST_NAME = Path.of("/proc/sys/kernel/hostname");

    private static final String MACHINE = machineOfProcess();

    private static final AtomicInteger OPENED = new AtomicInteger();

    /** One more of this kind in this process. */
    static TerminalName next(String kind) {
        String process = "%s.%s".formatted(ProcessHandle.current().pid(), OPENED.incrementAndGet());
        return new TerminalName(kind, MACHINE, process);
    }

    /** Takes apart what stands in a journal; earlier programs wrote the kind alone. */
    static TerminalName parse(String text) {
        int at = text.indexOf('@');
        int number = text.lastIndexOf('#');
        return at < 0 || number < at
                ? new TerminalName(text, "", "")
                : new TerminalName(text.substring(0, at), text.substring(at + 1, number), text.substring(number + 1));
    }

    /** The machine, where it is another one than that. */
    Optional<String> machineElsewhere(TerminalName here) {
        return Optional.of(machine).filter(name -> !name.isEmpty() && !name.equals(here.machine()));
    }

    private static String machineOfProcess() {
        return Optional.ofNullable(System.getenv("COMPUTERNAME")).orElseGet(TerminalName::hostName);
    }

    private static String hostName() {
        try {
            return Files.readString(HOST_NAME).strip();
        } catch (IOException unsaid) {
            return "";
        }
    }

    @Override
    public String toString() {
        return "%s@%s#%s".formatted(kind, machine, process);
    }
}
