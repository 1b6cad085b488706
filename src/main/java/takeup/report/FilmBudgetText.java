package takeup.report;

import java.util.Optional;
import takeup.advice.FilmBudget;
import takeup.text.English;

/** Whether there is film enough for the plan, in words: {@code the plan wants 84, 23 are left in the cameras, …}. */
public final class FilmBudgetText {
    private FilmBudgetText() {}

    /** The sum in words; empty where there is no plan yet. */
    public static Optional<String> words(FilmBudget budget) {
        return budget.framesWanted() == 0 ? Optional.empty() : Optional.of(sum(budget));
    }

    static String sum(FilmBudget budget) {
        String there = "the plan wants " + budget.framesWanted() + ", " + budget.framesInCameras()
                + " are left in the cameras";
        if (!budget.isBagKept()) {
            return there + ", and no bag is kept (bag add)";
        }
        int rolls = budget.rollsInBag();
        int others = budget.rollsForNoCamera();
        String bag = rolls == 0 && others > 0
                ? ""
                : ", " + English.count(rolls, "roll") + " in the bag " + English.agree(rolls, "is", "are") + " "
                        + budget.framesInBag();
        String beside = others == 0
                ? ""
                : ", " + English.count(others, "roll") + " in the bag " + English.agree(others, "fits", "fit")
                        + " no camera in use";
        return there + bag + beside + ": " + verdict(budget);
    }

    private static String verdict(FilmBudget budget) {
        if (budget.isWaitingForCamera()) {
            return "choose one (cam)";
        }
        return budget.framesOver() < 0 ? -budget.framesOver() + " TOO FEW" : "enough, " + budget.framesOver() + " over";
    }
}
