package org.stillroom.workbench.handlers;

import java.util.List;
import java.util.Map;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.MUIElement;
import org.eclipse.e4.ui.workbench.modeling.EModelService;

/** Gives every stack of the window its first share of the room again. */
public final class ResetLayoutHandler {
    private static final Map<String, String> SHARES =
            Map.of(
                    "org.stillroom.workbench.stack.left", "2300",
                    "org.stillroom.workbench.sash.right", "7700",
                    "org.stillroom.workbench.stack.work", "7700",
                    "org.stillroom.workbench.stack.support", "2300");

    /** Shows all stacks in their first sizes. */
    @Execute
    void reset(EModelService model, MApplication application) {
        SHARES.forEach(
                (id, share) -> {
                    List<MUIElement> found =
                            model.findElements(application, id, MUIElement.class, List.of());
                    for (MUIElement element : found) {
                        element.getTags().removeAll(List.of("Minimized", "Maximized"));
                        element.setVisible(true);
                        element.setToBeRendered(true);
                        element.setContainerData(share);
                    }
                });
    }
}
