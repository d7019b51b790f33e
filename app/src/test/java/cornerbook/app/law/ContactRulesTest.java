package cornerbook.app.law;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.core.coming.Channel;
import cornerbook.core.coming.Purpose;
import cornerbook.core.finding.Citation;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContactRulesTest {
    /** In no place is there a purpose or a way without a rule, and each says where it comes from. */
    @Test
    void everyPlaceHasARuleWithItsSource() {
        for (var place : List.of("", "CA-QC", "CA-BC", "NO", "SE", "DE", "NZ", "US")) {
            for (var purpose : Purpose.values()) {
                for (var channel : Channel.values()) {
                    assertThat(ContactRules.at(place).get(purpose, channel).source())
                            .as("%s %s %s", place, purpose, channel)
                            .isInstanceOfSatisfying(Citation.class, source -> {
                                assertThat(source.english()).isNotBlank();
                                assertThat(source.french()).isNotBlank().doesNotContain("'");
                            });
                }
            }
        }
    }

    /**
     * Canada, S.C. 2010, c. 23: section 6(6)(c), what is solely safety information needs no consent; section 10(10)(a), a customer of two
     * years. Directive 2002/58/EC, article 13(2): own customers, without a term, until they object.
     */
    @Test
    void aCountrysOwnRuleGoesBeforeTheRest() {
        assertThat(ContactRules.at("CA-QC").get(Purpose.SAFETY, Channel.E_MAIL).months())
                .isNull();
        assertThat(ContactRules.at("CA-QC").get(Purpose.SEASON, Channel.E_MAIL).months())
                .isEqualTo(24);
        assertThat(ContactRules.at("CA-QC").get(Purpose.SEASON, Channel.TELEPHONE).months())
                .isEqualTo(18);
        assertThat(ContactRules.at("SE").get(Purpose.SEASON, Channel.MESSAGE).months())
                .isNull();
        assertThat(ContactRules.at("SE").get(Purpose.OTHER, Channel.MESSAGE).months())
                .isZero();
    }
}
