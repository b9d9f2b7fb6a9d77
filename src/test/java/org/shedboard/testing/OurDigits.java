package org.shedboard.testing;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** For tests of what a library writes numbers in: formats as the program sets them when it starts, wherever the tests run. */
public final class OurDigits implements BeforeAllCallback, AfterAllCallback {
    private Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @Override
    public void beforeAll(ExtensionContext context) {
        before = Locale.getDefault(Locale.Category.FORMAT);
        Locale.setDefault(Locale.Category.FORMAT, Locale.ROOT);
    }

    @Override
    public void afterAll(ExtensionContext context) {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }
}
