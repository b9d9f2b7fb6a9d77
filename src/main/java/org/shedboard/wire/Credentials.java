package org.shedboard.wire;

/** The name and the password by which a server lets terminals in. Nothing prints the password by accident. */
public record Credentials(String name, String password) {
    @Override
    public String toString() {
        return name;
    }
}
