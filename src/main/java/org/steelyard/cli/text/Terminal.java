package org.steelyard.cli.text;

import java.io.Console;
import java.lang.reflect.InvocationTargetException;

/** Whether a person looks at the output. */
public final class Terminal {

    private Terminal() {}

    /** True if input and output are both a terminal. */
    @SuppressWarnings("SystemConsoleNull") // told apart below: from Java 22 there is a console without a terminal
    public static boolean isThere() {
        Console console = System.console();
        return console != null && saysSo(console);
    }

    private static boolean saysSo(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true; // before Java 22 a console is a terminal
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
