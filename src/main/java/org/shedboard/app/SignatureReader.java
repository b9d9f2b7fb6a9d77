package org.shedboard.app;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shedboard.app.command.CannotDo;
import org.shedboard.day.Day;
import org.shedboard.day.Signer;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;

/** Has somebody sign what a command is to do: finds out who, asks for their PIN, and wipes it when that is done. */
final class SignatureReader {
    private final Day day;
    private final PinReader reader;

    SignatureReader(Day day, PinReader reader) {
        this.day = day;
        this.reader = reader;
    }

    /** @param by id of the person who was named as the one to sign */
    <T> T signed(Signer signer, Optional<String> by, Function<Signature, T> work) {
        Person person = who(signer, by);
        try (Pin pin = day.books().signers().isEmpty() ? reader.askNew(person.name()) : reader.ask(person.name())) {
            return work.apply(new Signature(person, pin));
        }
    }

    /** Whom the act names, else who was named with it, else whoever is in charge, else the only one who can. */
    private Person who(Signer signer, Optional<String> by) {
        if (signer instanceof Signer.Named named) {
            return day.shop().expectPerson(named.personId());
        }
        List<Person> people = signer.among(day);
        Optional<Person> inCharge = people.stream()
                .filter(person -> person.id().equals(day.inCharge()))
                .findFirst();
        return by.map(day.shop()::expectPerson)
                .or(() -> inCharge)
                .or(() -> people.size() == 1 ? Optional.of(people.get(0)) : Optional.empty())
                .orElseThrow(() -> new CannotDo("command.who_signs"));
    }
}
