package cornerbook.app.door;

import cornerbook.app.picture.TabletScreen;
import cornerbook.app.request.Told;
import cornerbook.core.say.Said;
import java.util.Arrays;
import java.util.List;

/** What the owner of a tablet does, one after the other, so that it trusts the shop's certificate. */
public enum TrustStep implements Said {
    ANDROID_SETTINGS(Tablet.ANDROID, ScreenWord.SETTINGS, ScreenWord.SECURITY),
    ANDROID_SECURITY(Tablet.ANDROID, ScreenWord.SECURITY, ScreenWord.CREDENTIALS),
    ANDROID_CREDENTIALS(Tablet.ANDROID, ScreenWord.CREDENTIALS, ScreenWord.INSTALL_CERTIFICATE),
    ANDROID_KIND(Tablet.ANDROID, ScreenWord.INSTALL_CERTIFICATE, ScreenWord.CA_CERTIFICATE),
    ANDROID_WARNING(Tablet.ANDROID, ScreenWord.WARNING, ScreenWord.INSTALL_ANYWAY),
    ANDROID_FILE(Tablet.ANDROID, ScreenWord.DOWNLOADS, ScreenWord.FILE),
    IPAD_ALLOW(Tablet.IPAD, ScreenWord.BROWSER, ScreenWord.ALLOW),
    IPAD_PROFILE(Tablet.IPAD, ScreenWord.IPAD_SETTINGS, ScreenWord.PROFILE_DOWNLOADED),
    IPAD_INSTALL(Tablet.IPAD, ScreenWord.PROFILE, ScreenWord.INSTALL),
    IPAD_ABOUT(Tablet.IPAD, ScreenWord.GENERAL, ScreenWord.ABOUT),
    IPAD_TRUST(Tablet.IPAD, ScreenWord.ABOUT, ScreenWord.TRUST_SETTINGS),
    IPAD_SWITCH(Tablet.IPAD, ScreenWord.TRUST_SETTINGS, ScreenWord.SWITCH);

    private enum Tablet {
        ANDROID,
        IPAD
    }

    private final Tablet tablet;
    private final ScreenWord screen;
    private final ScreenWord tapped;

    TrustStep(Tablet tablet, ScreenWord screen, ScreenWord tapped) {
        this.tablet = tablet;
        this.screen = screen;
        this.tapped = tapped;
    }

    /** After the file was loaded. */
    public static List<TrustStep> onAndroid() {
        return on(Tablet.ANDROID);
    }

    /** As the file is loaded, and then. */
    public static List<TrustStep> onIpad() {
        return on(Tablet.IPAD);
    }

    private static List<TrustStep> on(Tablet tablet) {
        return Arrays.stream(values()).filter(step -> step.tablet == tablet).toList();
    }

    /** Whose steps these are, as a word for messages. */
    public String system() {
        return tablet.name();
    }

    /** The screen with the line that is touched, as SVG. */
    public String picture() {
        var title = Told.say(screen);
        var line = Told.say(tapped);
        return TabletScreen.svg(
                title, line, Told.labels("app/door").of("screen-and-line", "screen", title, "line", line));
    }
}
