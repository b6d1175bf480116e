package org.stillroom.inquiry.ask;

import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.inquiry.Study;
import org.stillroom.lineage.Drink;
import org.stillroom.model.progress.Progress;

/** An inquiry about one drink of the open library. */
abstract class DrinkInquiry implements Inquiry {

    @Override
    public final String example() {
        return name() + " \"harbour master's punch\"";
    }

    @Override
    public final List<Parameter> parameters() {
        return List.of(DrinkChoice.PARAMETER);
    }

    @Override
    public final Answer answer(Desk desk, Arguments arguments, Progress progress) {
        Study study = desk.study(progress);
        return answer(study, DrinkChoice.of(study, arguments, progress), progress);
    }

    /** Answers the question for the drink that was named. */
    abstract Answer answer(Study study, Drink drink, Progress progress);
}
