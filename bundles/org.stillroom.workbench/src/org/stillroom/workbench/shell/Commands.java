package org.stillroom.workbench.shell;

import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.commands.MBindingTable;
import org.eclipse.e4.ui.model.application.commands.MCommand;
import org.eclipse.e4.ui.model.application.commands.MKeyBinding;
import org.eclipse.e4.ui.model.application.commands.MParameter;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.jface.bindings.keys.ParseException;

/** Every command that the application model and its fragments declare, with its key. */
@Creatable
public final class Commands {
    private final MApplication application;
    private final ECommandService commands;
    private final EHandlerService handlers;

    /** Makes the list of commands of an application. */
    @Inject
    public Commands(MApplication application, ECommandService commands, EHandlerService handlers) {
        this.application = application;
        this.commands = commands;
        this.handlers = handlers;
    }

    /** A command as a person knows it. */
    public record Entry(
            String id, Map<String, Object> values, String name, String what, String key) {}

    /** Returns every command that can be run now, by name. */
    public List<Entry> runnable() {
        List<Entry> all = new ArrayList<>(bound());
        for (MCommand command : application.getCommands()) {
            boolean known = all.stream().anyMatch(e -> e.id().equals(command.getElementId()));
            if (!known && command.getParameters().isEmpty()) {
                all.add(entry(command, Map.of(), ""));
            }
        }
        all.removeIf(e -> !canRun(e));
        all.sort(Comparator.comparing(Entry::name));
        return List.copyOf(all);
    }

    /** Returns every command that has a key, by name. */
    public List<Entry> withKeys() {
        List<Entry> all = new ArrayList<>(bound());
        all.sort(Comparator.comparing(Entry::name));
        return List.copyOf(all);
    }

    /** Runs a command. */
    public void run(Entry entry) {
        handlers.executeHandler(command(entry));
    }

    private boolean canRun(Entry entry) {
        return handlers.canExecute(command(entry));
    }

    private ParameterizedCommand command(Entry entry) {
        return commands.createCommand(entry.id(), entry.values());
    }

    private List<Entry> bound() {
        List<Entry> all = new ArrayList<>();
        for (MBindingTable table : application.getBindingTables()) {
            for (MKeyBinding binding : table.getBindings()) {
                Optional.ofNullable(binding.getCommand())
                        .ifPresent(c -> all.add(entry(c, values(binding), key(binding))));
            }
        }
        return all;
    }

    private static Map<String, Object> values(MKeyBinding binding) {
        Map<String, Object> values = new HashMap<>();
        for (MParameter parameter : binding.getParameters()) {
            values.put(parameter.getName(), parameter.getValue());
        }
        return values;
    }

    private Entry entry(MCommand command, Map<String, Object> values, String key) {
        Object part = values.get(org.stillroom.workbench.handlers.ShowPartHandler.PART);
        String name = part == null ? command.getCommandName() : "Show " + partName((String) part);
        String what = Optional.ofNullable(command.getDescription()).orElse("");
        return new Entry(command.getElementId(), Map.copyOf(values), name, what, key);
    }

    private String partName(String id) {
        return application.getChildren().stream()
                .map(
                        window ->
                                application
                                        .getContext()
                                        .get(
                                                org.eclipse.e4.ui.workbench.modeling.EModelService
                                                        .class)
                                        .find(id, window))
                .filter(org.eclipse.e4.ui.model.application.ui.MUILabel.class::isInstance)
                .map(e -> ((org.eclipse.e4.ui.model.application.ui.MUILabel) e).getLabel())
                .findFirst()
                .orElse(id);
    }

    private static String key(MKeyBinding binding) {
        try {
            return KeySequence.getInstance(binding.getKeySequence()).format();
        } catch (ParseException notAKey) {
            return binding.getKeySequence();
        }
    }
}
