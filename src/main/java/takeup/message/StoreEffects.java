package takeup.message;

import java.util.Optional;
import java.util.function.Consumer;
import takeup.roll.Roll;

/** Does what the model asks of the disk, one thing after the other, and answers with messages. */
public final class StoreEffects {
    private final StepStore store;
    private final Consumer<Message> answers;

    public StoreEffects(StepStore store, Consumer<Message> answers) {
        this.store = store;
        this.answers = answers;
    }

    /** Does one thing; what is not the disk's is left alone. */
    public void run(Effect effect) {
        if (effect instanceof Effect.Save save) {
            save(save);
        } else if (effect instanceof Effect.Fetch fetch) {
            answers.accept(store.read(fetch.roll()));
        } else if (effect instanceof Effect.ListRolls) {
            StepStore.RollList list = store.list();
            list.rolls().ifPresent(it -> answers.accept(new Message.Listed(it, list.ordered())));
            list.problems().stream().findFirst().ifPresent(it -> answers.accept(new Message.Notice(it)));
        } else if (effect instanceof Effect.ReadOrders) {
            answers.accept(store.readOrders());
        } else if (effect instanceof Effect.WriteOrder order) {
            answers.accept(store.writeOrder(order.draft(), order.at()));
        } else if (effect instanceof Effect.MarkOrder order) {
            answers.accept(store.markOrder(order.mark(), order.at()));
        } else if (effect instanceof Effect.Find find) {
            answers.accept(new Message.Found(store.find(find.query())));
        } else if (effect instanceof Effect.Draft draft) {
            store.draft(draft.text());
        }
    }

    private void save(Effect.Save save) {
        long step = save.step().step();
        store.save(save.step()).ifPresentOrElse(why -> answers.accept(new Message.SaveFailed(step, why)), () -> {
            Optional<String> exportError = store.export(save.rollsToExport());
            answers.accept(
                    new Message.Saved(step, exportError.isPresent() ? Message.Export.FAILED : Message.Export.WRITTEN));
            store.remarks().forEach(it -> answers.accept(new Message.Notice(it)));
            exportError.ifPresent(why -> answers.accept(exportFailed(save, why)));
        });
    }

    private static Message exportFailed(Effect.Save save, String why) {
        String rolls = String.join(
                ", ",
                save.rollsToExport().stream()
                        .map(Roll::id)
                        .map(Object::toString)
                        .toList());
        return new Message.Notice(
                "the export of " + rolls + " could not be written: " + why + "; it is tried again at the next start");
    }
}
