package org.shedboard.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shedboard.estimate.Catalogue;
import org.shedboard.pack.fault.Fault;
import org.shedboard.register.Notice;
import org.shedboard.shop.Fit;

class NoticesFileTest {
    private static final Catalogue CATALOGUE = Seed.catalogue();

    @Test
    void a_notice_is_read_with_all_that_narrows_it() {
        Notice notice = read("""
                {"id": "N-1", "title": "A hose rubs", "classes": ["quad"], "label": "Burr", "yearFrom": 2020, "yearTo": 2021,
                 "prefix": "ab-", "numberFrom": 10, "numberTo": 20, "work": "brakes-front"}""").expectValue().get(0);
        assertEquals("N-1", notice.id());
        assertEquals(List.of("quad"), notice.classes());
        assertEquals(2021, notice.yearTo().orElseThrow());
        assertEquals("AB-", notice.numbers().prefix());
        assertEquals(20, notice.numbers().to().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"id\": \"N\", \"title\": \"T\", \"label\": \"B\", \"work\": \"nonsense\"} | notices[0].work",
                "{\"id\": \"N\", \"title\": \"T\", \"classes\": [\"canoe\"], \"work\": \"electrics\"} | notices[0].classes[0]",
                "{\"id\": \"N\", \"title\": \"T\", \"classes\": [\"tractor\"], \"work\": \"brakes-front\"} | notices[0].work",
                "{\"id\": \"N\", \"title\": \"T\", \"work\": \"electrics\"} | notices[0].label",
                "{\"id\": \"N\", \"title\": \"T\", \"yearFrom\": 2020, \"yearTo\": 2019, \"work\": \"electrics\"} | notices[0].yearTo",
                "{\"id\": \"N\", \"title\": \"T\", \"numberFrom\": 9, \"numberTo\": 8, \"label\": \"B\", \"work\": \"electrics\"} | notices[0].numberTo",
                "{\"id\": \"N\", \"label\": \"B\", \"work\": \"electrics\"} | notices[0].title",
                "{\"id\": \"N\", \"title\": \"T\", \"label\": \"B\", \"work\": \"electrics\", \"colour\": 1} | notices[0].colour"
            })
    void a_fault_is_told_with_its_place(String notice, String place) {
        assertEquals(
                List.of(place), read(notice).faults().stream().map(Fault::where).toList());
    }

    @Test
    void two_notices_of_one_id_are_a_fault() {
        String one = "{\"id\": \"N\", \"title\": \"T\", \"label\": \"B\", \"work\": \"electrics\"}";
        assertEquals(
                List.of("notices[1].id"),
                read(one + ", " + one).faults().stream().map(Fault::where).toList());
    }

    @Test
    void the_demonstrations_notices_concern_some_of_its_machines() {
        var shop = Seed.shop(CATALOGUE);
        for (Notice notice : shop.notices()) {
            long concerned = shop.machines().stream()
                    .filter(machine ->
                            notice.fit(machine.classId(), machine.label(), machine.modelYear(), machine.number())
                                    == Fit.YES)
                    .count();
            assertEquals(true, concerned > 0 && concerned < 10, notice.id() + " concerns " + concerned);
        }
        assertEquals(3, shop.notices().size());
    }

    private static Reading<List<Notice>> read(String notices) {
        return NoticesFile.read("{\"notices\": [" + notices + "]}", CATALOGUE);
    }
}
