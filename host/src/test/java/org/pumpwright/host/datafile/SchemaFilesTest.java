package org.pumpwright.host.datafile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.host.app.bucket.ScaleSettings;
import org.pumpwright.host.app.bucket.SheetFile;
import org.pumpwright.host.app.bucket.ShopFile;
import org.pumpwright.host.catalog.FluidFile;
import org.pumpwright.host.catalog.ModelFile;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.CurveFile;
import org.pumpwright.host.plan.PlanFile;
import org.pumpwright.host.rule.RulesFile;
import org.pumpwright.host.stand.StandFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SchemaFilesTest {
    private static final Map<String, List<String>> BOUNDS = Map.of(
            "number", List.of("minimum", "maximum"),
            "integer", List.of("minimum", "maximum"),
            "array", List.of("minItems", "maxItems", "items"),
            "object", List.of("properties", "additionalProperties"));

    static Stream<JsonNode> schemas() throws IOException {
        return Stream.of(
                schema(PlanFile.class, "plan"),
                schema(ModelFile.class, "model"),
                schema(RulesFile.class, "rules"),
                schema(StandFile.class, "stand"),
                schema(CurveFile.class, "curve"),
                schema(CurveFile.class, "known-good"),
                schema(SheetFile.class, "sheet"),
                schema(ShopFile.class, "shop"),
                schema(ScaleSettings.class, "scale"),
                schema(FluidFile.class, "fluid"));
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void everyValueHasBoundsThatCanBeTold(JsonNode schema) {
        for (JsonNode value : valuesWithin(schema)) {
            String type = value.path("type").asString("");
            assertThat(value.propertyNames()).as(value.toString()).containsAll(BOUNDS.getOrDefault(type, List.of()));
            if (type.equals("string")) {
                assertThat(value.has("x-allowed") ? value.has("pattern") : value.has("maxLength"))
                        .as(value.toString())
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void everyKeyStandsInTheReference(JsonNode schema) throws IOException {
        String reference = Files.readString(Path.of(System.getProperty("pumpwright.root"), "docs/reference/files.md"));
        for (String key : schema.findValues("properties").stream()
                .flatMap(properties -> properties.propertyNames().stream())
                .toList()) {
            assertThat(reference).contains("`" + key + "`");
        }
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void everyKindOfUnitMayBeNamed(JsonNode schema) {
        JsonNode kind = schema.path("properties").path("kind");
        if (!kind.isMissingNode()) {
            assertThat(SchemaWords.texts(kind.path("enum")))
                    .containsExactlyElementsOf(
                            Stream.of(UnitKind.values()).map(UnitKind::word).toList());
        }
    }

    private static List<JsonNode> valuesWithin(JsonNode schema) {
        return schema.findParents("type").stream()
                .filter(node -> node.path("type").isString())
                .filter(node -> node.size() > 1)
                .toList();
    }

    private static JsonNode schema(Class<?> owner, String name) throws IOException {
        try (InputStream in = owner.getResourceAsStream(name + ".schema.json")) {
            return new JsonMapper().readTree(in);
        }
    }
}
