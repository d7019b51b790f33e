package cornerbook.app.door;

import cornerbook.core.say.Said;

/** What tablets call the places in their settings; other makers and years have other words. */
public enum ScreenWord implements Said {
    SETTINGS,
    SECURITY,
    CREDENTIALS,
    INSTALL_CERTIFICATE,
    CA_CERTIFICATE,
    WARNING,
    INSTALL_ANYWAY,
    DOWNLOADS,
    FILE,
    BROWSER,
    ALLOW,
    IPAD_SETTINGS,
    PROFILE_DOWNLOADED,
    PROFILE,
    INSTALL,
    GENERAL,
    ABOUT,
    TRUST_SETTINGS,
    SWITCH
}
