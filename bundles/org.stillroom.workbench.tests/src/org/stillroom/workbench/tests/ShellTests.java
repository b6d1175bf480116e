package org.stillroom.workbench.tests;

import org.junit.jupiter.api.Test;

class ShellTests {
    @Test
    void opens() {
        try (Window window = Window.open()) {
            window.screenshot("shell-light");
            window.command("org.stillroom.workbench.command.theme", java.util.Map.of());
            window.screenshot("shell-dark");
        }
    }
}
