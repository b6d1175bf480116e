package org.stillroom.workbench.tests;

import java.util.List;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Arguments;
import org.stillroom.inquiry.Desk;
import org.stillroom.inquiry.Inquiry;
import org.stillroom.inquiry.Parameter;
import org.stillroom.model.progress.Progress;

/** An inquiry that has no answer and looks for it until it is stopped. */
final class WaitingInquiry implements Inquiry {
    @Override
    public String name() {
        return "wait";
    }

    @Override
    public String summary() {
        return "wait until somebody stops it";
    }

    @Override
    public String example() {
        return "wait";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of();
    }

    @Override
    public Answer answer(Desk desk, Arguments arguments, Progress progress) {
        progress.begin("waiting", 1);
        while (true) {
            progress.check();
            try {
                Thread.sleep(5);
            } catch (InterruptedException interrupted) {
                throw new IllegalStateException(interrupted);
            }
        }
    }
}
