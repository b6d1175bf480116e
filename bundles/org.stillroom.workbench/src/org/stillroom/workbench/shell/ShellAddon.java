package org.stillroom.workbench.shell;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import org.eclipse.e4.core.contexts.ContextInjectionFactory;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.di.UISynchronize;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.swt.widgets.Display;
import org.stillroom.workbench.Decider;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.OpenLibrary;
import org.stillroom.workbench.Signals;
import org.stillroom.workbench.Themes;
import org.stillroom.workbench.Work;
import org.stillroom.workbench.widgets.FileChooser;

/** Puts what all parts share into the application's context and opens a library at the start. */
public final class ShellAddon {
    @Inject private IEclipseContext context;

    /** Makes what the parts share. */
    @PostConstruct
    void create(MApplication application, UISynchronize window, IEventBroker events) {
        IEclipseContext shared = application.getContext();
        Signals signals = new Signals(events);
        shared.set(Signals.class, signals);
        shared.set(Work.class, new Work(window, events));
        shared.set(Navigator.class, new Navigator(application));
        shared.set(Settings.class, new Settings());
        shared.set(FileChooser.class, new FileChooser());
        OpenLibrary library = ContextInjectionFactory.make(OpenLibrary.class, shared);
        shared.set(OpenLibrary.class, library);
        shared.set(Decider.class, ContextInjectionFactory.make(Decider.class, shared));
        shared.set(FirstLibrary.class, ContextInjectionFactory.make(FirstLibrary.class, shared));
        signals.on(UIEvents.UILifeCycle.APP_STARTUP_COMPLETE, MApplication.class, this::started);
    }

    /** Opens the library that the start calls for once the window stands. */
    private void started(MApplication running) {
        IThemeEngine themes = context.get(IThemeEngine.class);
        if (themes != null) {
            Themes.followNatively(themes, Display.getCurrent());
        }
        context.get(FirstLibrary.class).open();
    }
}
