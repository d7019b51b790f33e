package cornerbook.core.finding;

import cornerbook.core.say.Said;

/**
 * A place by the name that people call it; one that has no rule of its own on file by its code.
 *
 * @param name the code, with words for its parts joined by "_", as catalogues choose by
 * @param code ISO 3166-1 of a country or ISO 3166-2 of a region, as "CA-QC"
 */
public record PlaceOfLaw(String name, String code) implements Said {
    public static PlaceOfLaw of(String code) {
        return new PlaceOfLaw(code.replace('-', '_'), code);
    }
}
