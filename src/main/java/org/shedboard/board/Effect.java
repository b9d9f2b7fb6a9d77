package org.shedboard.board;

import org.shedboard.day.Act;
import org.shedboard.shop.Shop;

/** What the shell shall do; it reports back with a {@link Msg}. */
public sealed interface Effect {
    /** Carry an act out and save it. */
    record CarryOut(Act act) implements Effect {}

    /** Say what could be promised for a machine being taken in. */
    record AskQuote(Act.TakeIn wanted, int round) implements Effect {}

    /** Make this shop, and open it. */
    record MakeShop(Shop shop) implements Effect {}

    /** Open the demonstration shop. */
    record OpenDemonstration() implements Effect {}

    /** Paint the whole screen anew. */
    record Repaint() implements Effect {}

    /** Leave. */
    record Quit() implements Effect {}
}
