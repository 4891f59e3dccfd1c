package rungwise.rules;

import java.util.function.Supplier;

/** Makes a value when it is first asked for, and keeps it. */
final class Once<T> implements Supplier<T> {
    private final Supplier<T> make;
    private T made;

    Once(Supplier<T> make) {
        this.make = make;
    }

    @Override
    public synchronized T get() {
        if (made == null) {
            made = make.get();
        }
        return made;
    }
}
