package org.shedboard.app;

import java.util.Optional;
import org.shedboard.app.command.Answer;
import org.shedboard.app.command.CannotDo;
import org.shedboard.app.command.PinCommand;
import org.shedboard.day.Refusal;
import org.shedboard.shop.Person;
import org.shedboard.shop.Pin;
import org.shedboard.shop.Shop;

/** Sets or changes the PIN of a person, as a command asks for it. */
final class PinSetting {
    private final Workshop workshop;
    private final Pins pins;
    private final PinReader reader;

    PinSetting(Workshop workshop, PinReader reader) {
        this.workshop = workshop;
        this.pins = workshop.pins();
        this.reader = reader;
    }

    Answer set(PinCommand asked) {
        Shop shop = workshop.day().shop();
        Person person = expect(shop, asked.name());
        Optional<Person> signer = asked.by().map(name -> expect(shop, name));
        boolean isSigned = signer.isPresent() || pins.anySet();
        Optional<Refusal> refusal = isSigned ? signed(person, signer.orElse(person)) : unsigned(person);
        if (refusal.isPresent()) {
            throw new CannotDo(refusal.get());
        }
        return PinCommand.answer(person);
    }

    private static Person expect(Shop shop, String name) {
        return shop.findPersonCalled(name).orElseThrow(() -> new CannotDo("person_unknown", name));
    }

    private Optional<Refusal> unsigned(Person person) {
        try (Pin next = reader.askNew(person.name())) {
            return pins.set(person.id(), next, Optional.empty(), workshop.now());
        }
    }

    private Optional<Refusal> signed(Person person, Person signer) {
        if (!pins.isSet(signer.id())) {
            return Optional.of(PinWords.none(signer.name()));
        }
        try (Pin signing = reader.ask(signer.name());
                Pin next = reader.askNew(person.name())) {
            return pins.set(person.id(), next, Optional.of(new Signature(signer, signing)), workshop.now());
        }
    }
}
