package benchpace.files.plan;

import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.plan.AsTyped;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Writes what {@link KitDraft} reads; what a plan does not say is left out. */
final class KitJson {
    private KitJson() { }

    static ObjectNode write(Kit kit) {
        ObjectNode node = Json.object();
        figure(node, "roomCelsius", kit.roomCelsius());
        Numbers.unlessZero(node, "spillPercent", kit.spillPercent());
        Numbers.unlessZero(node, "readyMarginMinutes", kit.readyMarginMinutes());
        kit.promisedMinutes().ifPresent(minutes -> node.put("promisedMinutes", minutes));
        if (!kit.loads().equals(Loads.NONE)) {
            node.set("loads", loads(kit.loads()));
        }
        list(node, "melters", kit.melters(), KitJson::melter);
        list(node, "appliances", kit.appliances(), appliance -> appliance(appliance, kit));
        list(node, "circuits", kit.circuits(), KitJson::circuit);
        list(node, "supplies", kit.supplies(), KitJson::supply);
        typed(node, kit.asTyped());
        return node;
    }

    private static <T> void list(ObjectNode node, String field, List<T> things, Function<T, ObjectNode> written) {
        if (!things.isEmpty()) {
            var list = node.putArray(field);
            things.forEach(thing -> list.add(written.apply(thing)));
        }
    }

    private static ObjectNode loads(Loads loads) {
        ObjectNode node = Json.object();
        loads.convention().ifPresent(convention -> node.put("convention", Words.of(convention)));
        figure(node, "waxMakerPercent", loads.waxMakerPercent());
        figure(node, "certificatePercentOfTotal", loads.certificatePercentOfTotal());
        figure(node, "flashPointCelsius", loads.flashPointCelsius());
        typed(node, loads.asTyped());
        return node;
    }

    private static ObjectNode melter(Melter melter) {
        ObjectNode node = Json.object().put("id", melter.id()).put("name", melter.name()).put("wax", melter.wax());
        figure(node, "capacityGrams", melter.capacityGrams());
        Numbers.unlessZero(node, "heelGrams", melter.heelGrams());
        figure(node, "watts", melter.watts());
        figure(node, "efficiency", melter.efficiency());
        node.put("scentedIn", Words.of(melter.scentedIn()));
        typed(node, melter.asTyped());
        return node;
    }

    /** The name and the watts of a melter stand with the melter. */
    private static ObjectNode appliance(Appliance appliance, Kit kit) {
        ObjectNode node = Json.object().put("id", appliance.id());
        boolean named = appliance.melter().flatMap(kit::melter).map(Melter::name)
                .filter(appliance.name()::equals).isEmpty();
        if (named) {
            node.put("name", appliance.name());
        }
        appliance.melter().ifPresentOrElse(melter -> node.put("melter", melter),
                () -> figure(node, "watts", appliance.watts()));
        appliance.circuit().ifPresent(circuit -> node.put("circuit", circuit));
        Numbers.put(node, "onMinutes", appliance.onMinutes());
        return node;
    }

    private static ObjectNode circuit(Circuit circuit) {
        ObjectNode node = Json.object().put("id", circuit.id()).put("name", circuit.name());
        figure(node, "volts", circuit.volts());
        figure(node, "amps", circuit.amps());
        circuit.rule().ifPresent(rule -> node.put("rule", Words.of(rule)));
        return node;
    }

    private static ObjectNode supply(Supply supply) {
        ObjectNode node = Json.object().put("id", supply.id()).put("name", supply.name());
        Numbers.unlessZero(node, "perSeat", supply.perSeat());
        Numbers.unlessZero(node, "perClass", supply.perClass());
        Numbers.unlessZero(node, "sparePercent", supply.sparePercent());
        Numbers.put(node, "packSize", supply.packSize());
        Numbers.unlessZero(node, "inStock", supply.inStock());
        if (supply.reusable()) {
            node.put("reusable", true);
        }
        figure(node, "pricePerPack", supply.pricePerPack());
        if (!supply.box().isEmpty()) {
            node.put("box", supply.box());
        }
        return node;
    }

    static void typed(ObjectNode node, AsTyped typed) {
        if (!typed.equals(AsTyped.NONE)) {
            ObjectNode texts = node.putObject(AsTypedFields.NAME);
            typed.texts().forEach(texts::put);
        }
    }

    private static void figure(ObjectNode node, String field, OptionalDouble value) {
        value.ifPresent(number -> Numbers.put(node, field, number));
    }
}
