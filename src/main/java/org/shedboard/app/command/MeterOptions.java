package org.shedboard.app.command;

import org.shedboard.register.Reading.Told;
import picocli.CommandLine.Option;

/** What is said of a reading that goes back or leaps. */
final class MeterOptions {
    @Option(names = "--new-meter", descriptionKey = "option.meter.new")
    private boolean isNew;

    @Option(names = "--meter-is-right", descriptionKey = "option.meter.right")
    private boolean isRight;

    Told told() {
        if (isNew && isRight) {
            throw new WrongUse("command.meter_one_of");
        }
        if (isNew) {
            return Told.NEW_METER;
        }
        return isRight ? Told.RIGHT_AS_TYPED : Told.AS_EXPECTED;
    }
}
