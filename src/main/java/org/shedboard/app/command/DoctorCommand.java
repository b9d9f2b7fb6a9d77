package org.shedboard.app.command;

import picocli.CommandLine.Command;

/** Whether the shop's records, and what they stand on, are sound. */
@Command(name = "doctor")
public final class DoctorCommand implements Wish {}
