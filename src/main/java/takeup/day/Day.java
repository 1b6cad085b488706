package takeup.day;

import java.time.OffsetDateTime;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import takeup.exposure.ExposureTime;
import takeup.exposure.FlashLight;
import takeup.exposure.Light;
import takeup.kit.Warning;
import takeup.roll.Coordinates;
import takeup.roll.Film;
import takeup.roll.RollId;
import takeup.roll.Scene;

/**
 * What a day adds up to beside the rolls.
 *
 * @param cameras which camera is in hand, how each is set, what each was last loaded with
 * @param metering the meter in hand, and the light that was read last
 * @param showing the shoot that is open, and who and where on frames to come
 * @param plan its key moments
 * @param supply the film that is there for it; it lives longer than a day
 * @param silenced warnings silenced for the day
 * @param routine whether the load routine asks after each loading
 * @param paper the paper form that is being read back
 */
public record Day(
        CamerasInUse cameras,
        Metering metering,
        Showing showing,
        Plan plan,
        Supply supply,
        Set<Warning.Code> silenced,
        boolean routine,
        Optional<PaperInput> paper) {
    /**
     * What frames to come show.
     *
     * @param shoot the shoot that is open
     * @param scene who and where, kept until it is changed; empty where nothing is
     */
    public record Showing(Optional<ShootInfo> shoot, Optional<Scene> scene) {
        static final Showing NOTHING = new Showing(Optional.empty(), Optional.empty());

        /** On the next day: who and where lasts as long as the shoot does. */
        Showing carried(OffsetDateTime now) {
            boolean isOn = shoot.isPresent()
                    && !shoot.get().date().isBefore(now.minusHours(6).toLocalDate());
            return isOn ? this : NOTHING;
        }
    }

    /**
     * The film that is there.
     *
     * @param bag what goes along
     * @param fridge what stays behind, until a bag is packed from it
     */
    public record Supply(Bag bag, Fridge fridge) {
        static final Supply NONE = new Supply(Bag.NONE, Fridge.NONE);

        Supply carried() {
            return new Supply(bag.carried(), fridge);
        }
    }

    /** The first day of all. */
    public static final Day FIRST = new Day(
            CamerasInUse.NONE,
            Metering.NONE,
            Showing.NOTHING,
            Plan.NONE,
            Supply.NONE,
            Set.of(),
            true,
            Optional.empty());

    /**
     * What the next day begins with: nothing silenced, no place used yet but the active one, no light of before. A
     * shoot that is over is closed, but for a night that goes on.
     */
    public Day carried(OffsetDateTime now) {
        return new Day(
                cameras.carried(),
                metering.carried(now),
                showing.carried(now),
                plan.carried(now.toLocalDateTime()),
                supply.carried(),
                Set.of(),
                routine,
                Optional.empty());
    }

    /** The shoot that is open. */
    public Optional<ShootInfo> shoot() {
        return showing.shoot();
    }

    /** Who and where on frames to come. */
    public Scene scene() {
        return showing.scene().orElse(Scene.NONE);
    }

    /** The film that goes along. */
    public Bag bag() {
        return supply.bag();
    }

    /** The film that stays behind. */
    public Fridge fridge() {
        return supply.fridge();
    }

    public Optional<CameraPlace> active() {
        return cameras.active();
    }

    public Set<CameraPlace> used() {
        return cameras.used();
    }

    public Map<String, String> lastBack() {
        return cameras.lastBack();
    }

    /** How a camera is set, and what belongs to it. */
    public CameraSetup setup(String camera) {
        return cameras.setups().getOrDefault(camera, CameraSetup.NOTHING);
    }

    public Map<CameraPlace, Film> films() {
        return cameras.films();
    }

    public Map<String, BulbTimer> timers() {
        return cameras.timers();
    }

    public Optional<String> meter() {
        return metering.meter();
    }

    public Optional<ExposureTime> preset() {
        return metering.preset();
    }

    public Optional<Light> light() {
        return metering.light();
    }

    public Optional<FlashLight> flash() {
        return metering.flash();
    }

    /** Where the shoot is. */
    public Optional<Coordinates> position() {
        return shoot().isPresent() ? shoot().get().position() : Optional.empty();
    }

    /** With another state of a camera. */
    public Day with(String camera, CameraSetup setup) {
        return with(cameras.with(camera, setup));
    }

    /** With a film as the last one that was loaded in a place. */
    public Day loaded(CameraPlace place, Film film) {
        return with(cameras.loaded(place, film));
    }

    /** With what a roll is called, of whatever day it is. */
    public Day named(RollId roll, Optional<String> name) {
        CamerasInUse other = cameras.named(roll, name);
        return other == cameras ? this : with(other);
    }

    /** The roll that the photographer calls so, among the newest. */
    public Optional<RollId> rollNamed(String name) {
        return cameras.names().entrySet().stream()
                .filter(it -> it.getKey().equalsIgnoreCase(name))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    Day with(CamerasInUse other) {
        return new Day(other, metering, showing, plan, supply, silenced, routine, paper);
    }

    Day with(Metering other) {
        return new Day(cameras, other, showing, plan, supply, silenced, routine, paper);
    }

    /** For another shoot. */
    public Day with(ShootInfo other) {
        return new Day(
                cameras,
                metering,
                new Showing(Optional.of(other), showing.scene()),
                plan,
                supply,
                silenced,
                routine,
                paper);
    }

    /** With others or another place on frames to come. */
    public Day with(Scene other) {
        Optional<Scene> kept = other.isNone() ? Optional.empty() : Optional.of(other);
        return new Day(cameras, metering, new Showing(shoot(), kept), plan, supply, silenced, routine, paper);
    }

    /** With another plan. */
    public Day with(Plan other) {
        return new Day(cameras, metering, showing, other, supply, silenced, routine, paper);
    }

    /** With another bag. */
    public Day with(Bag other) {
        return with(new Supply(other, supply.fridge()));
    }

    /** With another fridge. */
    Day with(Fridge other) {
        return with(new Supply(supply.bag(), other));
    }

    private Day with(Supply other) {
        return new Day(cameras, metering, showing, plan, other, silenced, routine, paper);
    }

    Day silencing(Warning.Code code) {
        Set<Warning.Code> all = new LinkedHashSet<>(silenced);
        all.add(code);
        return new Day(cameras, metering, showing, plan, supply, all, routine, paper);
    }

    Day withRoutine(boolean on) {
        return new Day(cameras, metering, showing, plan, supply, silenced, on, paper);
    }

    Day with(Optional<PaperInput> other) {
        return new Day(cameras, metering, showing, plan, supply, silenced, routine, other);
    }
}
