package org.stillroom.workbench;

import java.util.function.Consumer;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Widget;
import org.osgi.service.event.EventHandler;

/**
 * Hears the events of {@link Topics}, on the window's thread, for as long as a widget lives.
 *
 * <p>The events of one window reach that window alone, also where windows are opened in turn.
 */
public final class Signals {
    private final IEventBroker broker;

    /** Makes a listener to the events of a window. */
    public Signals(IEventBroker broker) {
        this.broker = broker;
    }

    /** Calls the consumer with what an event carries until the widget is gone. */
    public <T> void on(String topic, Class<T> type, Widget life, Consumer<T> consumer) {
        EventHandler handler = handler(type, consumer);
        broker.subscribe(topic, handler);
        life.addListener(SWT.Dispose, e -> broker.unsubscribe(handler));
    }

    /** Calls the consumer with what an event carries until the window is gone. */
    public <T> void on(String topic, Class<T> type, Consumer<T> consumer) {
        broker.subscribe(topic, handler(type, consumer));
    }

    private static <T> EventHandler handler(Class<T> type, Consumer<T> consumer) {
        return event -> {
            Object data = event.getProperty(IEventBroker.DATA);
            if (type.isInstance(data)) {
                consumer.accept(type.cast(data));
            }
        };
    }
}
