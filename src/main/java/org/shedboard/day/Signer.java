package org.shedboard.day;

import java.util.List;
import org.shedboard.shop.Person;

/** Who has to sign an act with their PIN. */
public sealed interface Signer {
    /** The person the act names as the one who answers for it. */
    record Named(String personId) implements Signer {}

    /** Whoever has a PIN: the act names nobody. */
    record Anybody() implements Signer {}

    /** Whether a signature of this person will do. */
    default boolean isMetBy(String personId) {
        return !(this instanceof Named named) || named.personId().equals(personId);
    }

    /** The people who can sign; where nobody has a PIN yet everybody, for the first one to sign chooses theirs with it. */
    default List<Person> among(Day day) {
        return day.shop().people().stream()
                .filter(person -> isMetBy(person.id()))
                .filter(person -> this instanceof Named
                        || day.books().signers().isEmpty()
                        || day.books().signers().contains(person.id()))
                .toList();
    }
}
