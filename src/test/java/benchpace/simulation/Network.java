package benchpace.simulation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;

/**
 * Several devices on a bad network: what one sends arrives at once, late, or after its answer was lost once more. A
 * device says when the tap was made by its own clock, which may be wrong, or says nothing.
 */
final class Network {
    /** @param offset how far its clock is ahead of the computer's */
    private record Device(String mark, String by, Duration offset) { }

    private final Random random;
    private final List<Device> devices;
    private final double bad;

    /** @param sound everything arrives at once and every clock is right */
    Network(Random random, boolean sound) {
        this.random = random;
        this.bad = sound ? 0 : random.nextDouble() * 0.5;
        this.devices = List.of(device("tablet", "instructor", sound), device("tablet", "instructor", sound),
                device("second-tablet", "instructor", sound), device("phone-1", "MO", sound),
                device("phone-2", "AB", sound), device("", "guest", sound));
    }

    private Device device(String mark, String by, boolean right) {
        int seconds = right || random.nextInt(4) > 0 ? 0 : random.nextInt(1_200) - 600;
        return new Device(mark, by, Duration.ofSeconds(seconds));
    }

    /**
     * @param into  what happens now
     * @param later what happens after a while
     */
    void send(ObjectNode command, Instant wall, List<Act> into, BiConsumer<Duration, Act> later) {
        Device device = devices.get(random.nextInt(devices.size()));
        if (random.nextInt(5) < 3 && !command.has("at")) {
            command.put("at", wall.plus(device.offset).toString());
        }
        Act.Send send = new Act.Send(device.mark, device.by, command);
        if (random.nextDouble() >= bad) {
            into.add(send);
        } else {
            later.accept(delay(), send);
        }
        while (random.nextDouble() < bad) {
            later.accept(delay(), send);
        }
    }

    private Duration delay() {
        return Duration.ofMillis(switch (random.nextInt(4)) {
            case 0 -> random.nextInt(300);
            case 1, 2 -> 1_000 + random.nextInt(30_000);
            default -> random.nextInt(20 * 60_000);
        });
    }
}
