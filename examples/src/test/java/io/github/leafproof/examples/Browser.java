package io.github.leafproof.examples;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** The browser of this machine, without a window and without a network. Nothing is fetched to start it. */
final class Browser implements AutoCloseable {

    /** A screen: how wide and how high in the browser's own pixels. */
    enum Screen {
        /** A narrow phone held upright. */
        PHONE(360, 740),
        DESKTOP(1280, 900);

        private final int width;
        private final int height;

        Screen(int width, int height) {
            this.width = width;
            this.height = height;
        }

        int width() {
            return width;
        }
    }

    /** Paper, in inches as browsers count it: ISO 216 A4 is 210 mm by 297 mm, Letter 8.5 in by 11 in. */
    enum Paper {
        A4(210 / 25.4, 297 / 25.4),
        LETTER(8.5, 11);

        private final double width;
        private final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }

        /** How wide a page's body may be between the margins of our style sheet, in the browser's pixels. */
        int bodyWidth() {
            return (int) ((width - 2 * 13 / 25.4) * 96);
        }

        /** How high, likewise. */
        int bodyHeight() {
            return (int) ((height - (14 + 15) / 25.4) * 96);
        }
    }

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** A browser whose memory of earlier visits is this folder; empty where this machine has none. */
    static Optional<Browser> start(Path profile) {
        Optional<File> browser = onPath("chromium");
        Optional<File> service = onPath("chromedriver");
        if (browser.isEmpty() || service.isEmpty()) {
            return Optional.empty();
        }
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser.get());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile.toAbsolutePath());
        ChromeDriverService driver = new ChromeDriverService.Builder()
                .usingDriverExecutable(service.get())
                .usingAnyFreePort()
                .build();
        ChromeDriver started = new ChromeDriver(driver, options);
        // Nobody looks at its window, and yet it has to show where keys have led to.
        started.executeCdpCommand("Emulation.setFocusEmulationEnabled", Map.of("enabled", true));
        return Optional.of(new Browser(started));
    }

    private static Optional<File> onPath(String program) {
        String path = Objects.requireNonNullElse(System.getenv("PATH"), "");
        return Arrays.stream(path.split(File.pathSeparator, -1))
                .map(folder -> new File(folder, program))
                .filter(File::canExecute)
                .findFirst();
    }

    /** Opens a file on a screen, light or dark. */
    void open(Path page, Screen screen, boolean dark) {
        show(screen.width, screen.height, screen == Screen.PHONE);
        media("screen", dark);
        driver.get(page.toUri().toString());
    }

    /** Shows the open page as it is on paper, as wide as paper is between its margins. */
    void layOnPaper(Paper paper) {
        show(paper.bodyWidth(), paper.bodyHeight(), false);
        media("print", false);
    }

    private void show(int width, int height, boolean phone) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", phone));
    }

    private void media(String kind, boolean dark) {
        Map<String, String> scheme = Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", kind, "features", List.of(scheme)));
    }

    /** What a script says of the open page. */
    Object ask(String script, Object... arguments) {
        return Objects.requireNonNull(driver.executeScript(script, arguments));
    }

    /** What a script says that takes its time: its last argument is the function to hand the answer to. */
    Object askAndWait(String script) {
        return Objects.requireNonNull(driver.executeAsyncScript(script));
    }

    /** Goes on to what keys reach next. */
    void pressTab() {
        for (String what : List.of("keyDown", "keyUp")) {
            driver.executeCdpCommand(
                    "Input.dispatchKeyEvent",
                    Map.of("type", what, "key", "Tab", "code", "Tab", "windowsVirtualKeyCode", 9));
        }
    }

    /** The open page as it is printed. */
    byte[] print(Paper paper) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
        Map<String, Object> printed = driver.executeCdpCommand(
                "Page.printToPDF",
                Map.of("paperWidth", paper.width, "paperHeight", paper.height, "preferCSSPageSize", false));
        return Base64.getDecoder().decode(String.valueOf(printed.get("data")));
    }

    /** The whole of the open page as a picture, for a person to look at. */
    byte[] picture() {
        Map<String, Object> shot = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        return Base64.getDecoder().decode(String.valueOf(shot.get("data")));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
