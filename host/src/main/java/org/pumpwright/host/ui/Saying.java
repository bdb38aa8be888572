package org.pumpwright.host.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.text.Interpreter;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;
import org.pumpwright.host.ui.work.Word;
import org.pumpwright.host.ui.work.Word.Measured;

/**
 * What the window says. Each text is a binding that follows the language and the units, so that everything switches at once. Bind a
 * label to it, or keep it: a binding that nobody holds is forgotten. JavaFX thread only.
 */
public final class Saying {
    private final ObjectProperty<Language> language;
    private final ObjectProperty<UnitSystem> units;

    /** Speaks this language and these units to begin with. */
    public Saying(Language language, UnitSystem units) {
        this.language = new SimpleObjectProperty<>(language);
        this.units = new SimpleObjectProperty<>(units);
    }

    /** The language of the moment. */
    public ObjectProperty<Language> languageProperty() {
        return language;
    }

    /** The units of the moment. */
    public ObjectProperty<UnitSystem> unitsProperty() {
        return units;
    }

    /**
     * The text with this key.
     *
     * @param values what goes where its gaps are; an {@link ObservableValue}, a {@link Word} and a {@link Measured} are followed
     */
    public StringBinding text(String key, Object... values) {
        List<Object> gaps = List.of(values);
        List<Observable> sources = new ArrayList<>(List.of(language, units));
        gaps.stream()
                .filter(Observable.class::isInstance)
                .map(Observable.class::cast)
                .forEach(sources::add);
        return binding(() -> now(new Word(key, gaps)), sources);
    }

    /** The text of a word. */
    public StringBinding text(Word word) {
        return binding(() -> now(word), List.of(language, units));
    }

    /** The text of the word that this value holds at the moment. */
    public StringBinding text(ObservableValue<Word> word) {
        return binding(() -> now(word.getValue()), List.of(language, units, word));
    }

    /** What a word says now. */
    public String now(Word word) {
        Object[] gaps = word.values().stream().map(this::resolved).toArray();
        if (word.key().isEmpty()) {
            return String.valueOf(gaps[0]);
        }
        return Texts.in(language.get()).say(word.key(), gaps);
    }

    private Object resolved(Object value) {
        if (value instanceof ObservableValue<?> observable) {
            return resolved(observable.getValue());
        }
        if (value instanceof Word word) {
            return now(word);
        }
        if (value instanceof Word.Stored sentence) {
            return new Interpreter(Texts.in(language.get())).typed(sentence.english());
        }
        return value instanceof Measured quantity ? quantity.print(units.get()) : value;
    }

    /** A percent sign stays on the line of its number. */
    private static StringBinding binding(Callable<String> said, List<Observable> sources) {
        return Bindings.createStringBinding(
                () -> said.call().replace(" %", "\u00a0%"), sources.toArray(new Observable[0]));
    }
}
