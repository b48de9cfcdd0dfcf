package benchpace.plan;

import static benchpace.plan.StandIns.prose;
import static java.util.stream.Collectors.toSet;

import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import java.util.Set;

/**
 * A plan without a word that somebody wrote: neither names and places nor sentences, and not the ids either, because
 * they are made of names. What counts stays: kinds, lengths, figures, and what belongs to what.
 */
public final class NamelessPlan {
    private final StandIns standIns;
    private final Set<String> waxes;

    private NamelessPlan(StandIns standIns, Set<String> waxes) {
        this.standIns = standIns;
        this.waxes = waxes;
    }

    /** @param standIns of the class or the plans that this one is told with */
    public static Plan of(Plan plan, StandIns standIns) {
        return new NamelessPlan(standIns, plan.candles().stream().map(candle -> candle.wax().id()).collect(toSet()))
                .plan(plan);
    }

    private Plan plan(Plan plan) {
        return new Plan(new PlanId(standIns.id("plan", plan.id().value())), standIns.name("plan", plan.id().value()),
                prose(plan.about()), standIns.name("place", plan.place()), plan.usualSeats(), plan.table(),
                plan.steps().stream().map(this::step).toList(),
                plan.activities().stream().map(this::activity).toList(),
                plan.candles().stream().map(this::candle).toList(), kit(plan.kit()));
    }

    private Step step(Step step) {
        return new Step(new StepId(standIns.id("step", step.id().value())), standIns.name("step", step.id().value()),
                step.kind(), step.opening(), step.planned(), step.allowance(), prose(step.say()),
                prose(step.caution()), prose(step.wall()), step.picture(), step.stations().map(this::stations));
    }

    private Stations stations(Stations stations) {
        return new Stations(stations.atOnce(), standIns.name("station", stations.what()), stations.each());
    }

    private Activity activity(Activity activity) {
        String id = activity.id().value();
        return new Activity(new ActivityId(standIns.id("activity", id)), standIns.name("activity", id),
                activity.kind(), activity.audience(), activity.typical(), activity.longest(), activity.places(),
                activity.needs(), activity.interruptible(), standIns.name("corner", activity.where()),
                standIns.name("leader", activity.ledBy()), prose(activity.cue()), prose(activity.caution()));
    }

    private Candle candle(Candle candle) {
        return new Candle(standIns.id("candle", candle.id()), standIns.name("candle", candle.id()),
                vessel(candle.vessel()), wax(candle.wax()), candle.fillGrams(), candle.fragranceFraction(),
                candle.roomCelsius(), candle.pourCelsius(), candle.tableTop(), candle.brim(), candle.convention(),
                AsTyped.NONE);
    }

    private Vessel vessel(Vessel vessel) {
        return new Vessel(standIns.id("vessel", vessel.id()), standIns.name("vessel", vessel.id()), vessel.material(),
                vessel.innerDiameterMillimetres(), vessel.wallMillimetres(), vessel.brimHeightMillimetres());
    }

    private Wax wax(Wax wax) {
        return new Wax(standIns.id("wax", wax.id()), standIns.name("wax", wax.id()), wax.densityKgM3(),
                wax.specificHeatSolidJKgK(), wax.specificHeatLiquidJKgK(), wax.latentHeatJKg(), wax.solidusCelsius(),
                wax.liquidusCelsius(), wax.conductivitySolidWMK(), wax.conductivityLiquidWMK(), wax.calibrated());
    }

    private Kit kit(Kit kit) {
        Loads loads = kit.loads();
        return new Kit(kit.roomCelsius(), kit.spillPercent(), kit.readyMarginMinutes(), kit.promisedMinutes(),
                new Loads(loads.convention(), loads.waxMakerPercent(), loads.certificatePercentOfTotal(),
                        loads.flashPointCelsius()),
                kit.melters().stream().map(this::melter).toList(),
                kit.appliances().stream().map(this::appliance).toList(),
                kit.circuits().stream().map(this::circuit).toList(),
                kit.supplies().stream().map(this::supply).toList());
    }

    private Melter melter(Melter melter) {
        return new Melter(standIns.id("melter", melter.id()), standIns.name("melter", melter.id()),
                standIns.id("wax", melter.wax()), melter.capacityGrams(), melter.heelGrams(), melter.watts(),
                melter.efficiency(), melter.scentedIn());
    }

    private Appliance appliance(Appliance appliance) {
        return new Appliance(standIns.id("appliance", appliance.id()), standIns.name("appliance", appliance.id()),
                appliance.watts(), appliance.melter().map(id -> standIns.id("melter", id)),
                appliance.circuit().map(id -> standIns.id("circuit", id)), appliance.onMinutes());
    }

    private Circuit circuit(Circuit circuit) {
        return new Circuit(standIns.id("circuit", circuit.id()), standIns.name("circuit", circuit.id()),
                circuit.volts(), circuit.amps(), circuit.rule());
    }

    /** One that bears the id of a candle's wax is that wax. */
    private Supply supply(Supply supply) {
        String kind = waxes.contains(supply.id()) ? "wax" : "supply";
        return new Supply(standIns.id(kind, supply.id()), standIns.name(kind, supply.id()), supply.perSeat(),
                supply.perClass(), supply.sparePercent(), supply.packSize(), supply.inStock(), supply.reusable(),
                supply.pricePerPack(), standIns.name("box", supply.box()));
    }
}
