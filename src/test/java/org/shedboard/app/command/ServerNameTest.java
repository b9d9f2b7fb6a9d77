package org.shedboard.app.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ServerNameTest {
    @ParameterizedTest
    @CsvSource({
        "shed.example,         shed.example, 9217",
        "shed.example:1,       shed.example, 1",
        "192.0.2.7:65535,      192.0.2.7,    65535",
        "[2001:db8::7],        2001:db8::7,  9217",
        "[2001:db8::7]:8000,   2001:db8::7,  8000"
    })
    void names_have_a_host_and_maybe_a_port(String text, String host, int port) {
        assertEquals(Optional.of(new ServerName(host, port)), ServerName.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", ":9217", "shed:", "shed:0", "shed:65536", "shed:x", "a/b", "shed;INIT=x", "2001:db8::7"})
    void other_texts_name_no_server(String text) {
        assertEquals(Optional.empty(), ServerName.parse(text));
    }

    @Test
    void a_name_is_said_as_it_can_be_typed() {
        assertEquals("[2001:db8::7]:8000", new ServerName("2001:db8::7", 8000).toString());
        assertEquals("shed.example:9217", new ServerName("shed.example", 9217).toString());
    }

    @Test
    void the_name_of_its_file_leads_nowhere_else() {
        assertEquals("2001_db8__7-8000", new ServerName("2001:db8::7", 8000).fileName());
    }
}
