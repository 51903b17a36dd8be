package org.steelyard.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The harness itself: it must be able to fail. */
class PublishedCasesHarnessTest {

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    private static PublishedCase printed(String name, String value, boolean misprint) {
        ObjectNode figures = object();
        figures.set(name, DecimalNode.valueOf(new BigDecimal(value)));
        return new PublishedCase(
                "T-1",
                "made",
                "made",
                "",
                "READ",
                "own",
                object(),
                misprint ? object() : figures,
                misprint ? figures : null,
                null,
                null,
                null,
                null);
    }

    @ParameterizedTest
    @CsvSource({
        "84.2, 84.249, true",
        "84.2, 84.25, true",
        "84.2, 84.2501, false",
        "84.20, 84.204, true",
        "84.20, 84.206, false",
        "84, 84.4, true",
        "84, 84.6, false",
        "-0.34, -0.335, true",
        "-0.34, 0.34, false"
    })
    void anAnswerMustMeetHalfTheLastPrintedDecimal(String value, double computedM, boolean right) {
        Answers answers = new Answers(printed("cgM", value, false));
        answers.length("cg", computedM);
        assertThat(answers.compared()).hasSize(1).allMatch(row -> row.right() == right);
        Answers misprinted = new Answers(printed("cgM", value, true));
        misprinted.length("cg", computedM);
        assertThat(misprinted.compared()).allMatch(row -> row.right() != right);
    }

    @Test
    void aFigureThatNothingAnswersFails() {
        Answers answers = new Answers(printed("cgPercentMac", "25", false));
        answers.length("cg", 25);
        assertThatExceptionOfType(AssertionError.class).isThrownBy(answers::compared);
    }

    @Test
    void aGivenFigureThatNobodyUsesIsTold() {
        ObjectNode node = object().put("massLb", 100).put("color", 1);
        node.putArray("items").addObject().put("armIn", 10).put("depthIn", 3);
        Given given = new Given(node);
        assertThat(given.massKg("mass").orElseThrow()).isEqualTo(45.359237);
        assertThat(given.list("items").get(0).lengthM("arm").orElseThrow()).isEqualTo(0.254);
        assertThat(given.unused()).isEqualTo(List.of("color", "depthIn"));
    }

    @Test
    void aCaseWithoutAnyAnswerOrWithAStrayToleranceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PublishedCase(
                        "T", "", "", "", "READ", "own", object(), object(), null, null, null, null, null))
                .withMessageContaining("expects nothing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PublishedCase(
                        "T",
                        "",
                        "",
                        "",
                        "READ",
                        "own",
                        object(),
                        object().put("a", 1),
                        null,
                        object().put("b", 1),
                        null,
                        null,
                        null))
                .withMessageContaining("b, which is not expected");
    }

    @ParameterizedTest
    @CsvSource({
        "MASS, Lb, 0.45359237",
        "LENGTH, In, 0.0254",
        "MOMENT, 1000LbIn, 11.521246198",
        "MOMENT, 100KgMm, 0.1",
        "DENSITY, LbPerUsGal, 0.119826427317",
        "AREA_LOAD, LbPerFt2, 4.882427636",
        "RUNNING_LOAD, LbPerFt, 1.488163943"
    })
    void unitsStandAtTheEndOfNames(Dimension dimension, String unit, double inside) {
        assertThat(dimension.inside(unit).orElseThrow())
                .isCloseTo(inside, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(dimension.inside("Furlong")).isEmpty();
    }
}
