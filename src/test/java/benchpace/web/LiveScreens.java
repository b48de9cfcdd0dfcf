package benchpace.web;

import com.microsoft.playwright.Browser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A class for each test, seen in a real Chromium by devices that must neither complain nor leave the board. */
@ExtendWith(Browsers.class)
public abstract class LiveScreens {
    public @TempDir Path data;
    protected TestBoard board;
    protected String id;
    protected Browser browser;
    private final List<Device> devices = new ArrayList<>();

    /** Opens {@link #board} and brings the class {@link #id} to where the tests begin. */
    protected abstract void begin();

    @BeforeEach void open(Browser browser) {
        this.browser = browser;
        begin();
    }

    @AfterEach void close() {
        letDevicesGo();
        board.close();
    }

    /** Those that are here so far, before others come. */
    protected void letDevicesGo() {
        devices.forEach(Device::assertNoComplaint);
        devices.forEach(Device::assertStayedHere);
        devices.forEach(Device::close);
        devices.clear();
    }

    /** Watched to the end of the test. */
    protected Device here(Device device) {
        devices.add(device);
        return device;
    }
}
