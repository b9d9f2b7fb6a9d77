package org.shedboard.pack.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TargetTermsTest {
    @Test
    void three_folders_alone_mean_everything_in_full() {
        TargetTerms terms = TargetTerms.parse("days", "reference", "kept");
        assertEquals(Path.of("reference"), terms.folders().reference());
        assertTrue(terms.wants("few"));
        assertEquals(1, terms.scale());
        assertEquals(3, terms.seeds());
        assertFalse(terms.keep());
    }

    @Test
    void options_say_what_and_how_long() {
        TargetTerms terms =
                TargetTerms.parse("d", "r", "k", "only=few,pace", "scale=0.5", "seeds=1", "files=2", "long=12", "keep");
        assertTrue(terms.wants("pace"));
        assertFalse(terms.wants("small"));
        assertEquals(0.5, terms.scale());
        assertEquals(1, terms.seeds());
        assertEquals(2, terms.files());
        assertEquals(12, terms.longDays());
        assertTrue(terms.keep());
    }

    @ParameterizedTest
    @ValueSource(strings = {"scale=0", "seeds=0", "files=0", "long=-1", "speed=3", "seeds", "scale=fast"})
    void what_means_nothing_is_refused(String option) {
        assertThrows(IllegalArgumentException.class, () -> TargetTerms.parse("d", "r", "k", option));
    }

    @Test
    void a_folder_that_is_not_named_is_missed() {
        assertThrows(IllegalArgumentException.class, () -> TargetTerms.parse("d", "r"));
    }
}
