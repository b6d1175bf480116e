package org.stillroom.workbench.trace;

import jakarta.inject.Named;
import java.util.Optional;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.stillroom.workbench.Explains;
import org.stillroom.workbench.Navigator;
import org.stillroom.workbench.Work;

/** Explains the amounts of what is selected in the part at the front. */
public final class ExplainHandler {
    /** Shows the explanation, or says what to select. */
    @Execute
    void explain(
            @org.eclipse.e4.core.di.annotations.Optional @Named(IServiceConstants.ACTIVE_PART)
                    MPart part,
            Navigator navigator,
            Work work) {
        Optional<Navigator.Reason> reason =
                Optional.ofNullable(part)
                        .map(MPart::getObject)
                        .filter(Explains.class::isInstance)
                        .flatMap(p -> ((Explains) p).reason());
        reason.ifPresentOrElse(
                navigator::explain,
                () -> work.say("Select a recipe, a version or a line first, then Ctrl+E."));
    }
}
