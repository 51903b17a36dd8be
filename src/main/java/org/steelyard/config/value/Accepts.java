package org.steelyard.config.value;

/** What a key accepts: turns the text that stands there into a value, or says why it cannot. */
@FunctionalInterface
public interface Accepts<T> {

    T read(String text) throws NotAcceptedException;
}
