package org.shedboard.screen;

import java.util.List;
import org.shedboard.board.Sight;
import org.shedboard.words.Words;

/** How much of time is shown and the keys that change it, in as many words as there is room for. */
final class SightWords {
    private SightWords() {}

    static List<String> of(Sight sight) {
        String zoom = Words.say(sight.zoom());
        String keys = Words.say("axis.keys", zoom);
        return sight.isFollowing()
                ? List.of(keys, Words.say("axis.keys_short"))
                : List.of(Words.say("axis.keys_back", zoom), keys, Words.say("axis.keys_short"));
    }
}
