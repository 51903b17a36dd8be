package org.steelyard.config;

/** What a key accepts: turns the text that stands there into a value, or says why it cannot. */
@FunctionalInterface
interface Accepts<T> {

    T read(String text) throws Unfit;
}
