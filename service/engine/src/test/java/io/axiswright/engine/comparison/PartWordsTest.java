package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.quantity.ResourceTable;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@org.jspecify.annotations.NullUnmarked
class PartWordsTest {

    private static final StudyResult RESULT = SystemStudy.proving().system(TestCell.request(3));

    /** The way there, with the elements as they stand in a real result. */
    private static List<Step> path(String place) {
        List<Step> path = new ArrayList<>();
        Object value = RESULT;
        for (String step : place.split(" ")) {
            if (value instanceof List<?> list) {
                Map<String, Object> elements = Records.counted(list);
                value = elements == null ? list.get(Integer.parseInt(step)) : elements.get(step.replace("_", " "));
                assertThat(value)
                        .as("%s in %s", step, elements == null ? list : elements.keySet())
                        .isNotNull();
                path.add(new Step.Element(step, elements == null ? Integer.parseInt(step) : 0, value));
            } else {
                path.add(new Step.Member(step));
                value = Patch.at(value, List.of(path.getLast()));
            }
        }
        return path;
    }

    /** Expected: what an engineer would say. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "buildable; buildability of the machine",
                "duty axes axis-1 figures peakTorque; peak torque of axis axis-1",
                "duty axes axis-1 unit copperLoss; copper loss of drive unit of axis axis-1",
                "duty axes axis-1 limits continuous use; utilisation of continuous limit of axis axis-1",
                "topology cost; cost of the control network",
                "topology gateways G1 spurs axis-2 cable; cable of spur to axis axis-2 of gateway G1",
                "controlPower voltages axis-1-drive-unit steady; steady voltage of 24 V terminal of drive unit axis-1",
                "controlPower voltages axis-1-drive-unit modes running voltage; "
                        + "voltage in mode running of 24 V terminal of drive unit axis-1",
                "controlPower voltages axis-1-drive-unit modes running; mode running of 24 V terminal of drive unit axis-1",
                "stopping zones zone-category-1 axes axis-1 distance; "
                        + "stopping distance of axis axis-1 of stop zone zone (category 1)",
                "supply circuits C1 poles; number of poles of circuit C1",
                "supply feeder current; current of the feeder",
                "billOfMaterials required total; total of required items of the bill of materials",
                "billOfMaterials required lines required:unit-small quantity; quantity of bill line unit-small (required)",
                "billOfMaterials required linesWithoutMass; "
                        + "number of lines without mass of required items of the bill of materials"
            })
    void placesOfAResultReadAsTheyAreSaid(String place, String words) {
        assertThat(PlaceWords.of(RESULT, path(place))).isEqualTo(words);
    }

    /** What is out of date in the table would silently be left out of sentences. */
    @Test
    void everyRowNamesWhatIsInResults() {
        Map<String, Class<?>> records = new LinkedHashMap<>();
        collect(StudyResult.class, records);
        Pattern component = Pattern.compile("\\{(\\w+)}");
        for (var row : ResourceTable.rows(PartWords.FILE)) {
            String member = row.getField("member").replace("[]", "");
            Class<?> owner = records.get(row.getField("owner"));
            assertThat(owner).as(row.toString()).isNotNull();
            RecordComponent told = component(owner, member);
            assertThat(told).as(row.toString()).isNotNull();
            var used = component.matcher(row.getField("words"));
            while (used.find()) {
                assertThat(told.getGenericType()).as(row.toString()).isInstanceOf(ParameterizedType.class);
                var element = (Class<?>) ((ParameterizedType) told.getGenericType()).getActualTypeArguments()[0];
                assertThat(component(element, used.group(1))).as(row.toString()).isNotNull();
            }
        }
    }

    private static RecordComponent component(Class<?> owner, String name) {
        return Arrays.stream(Objects.requireNonNull(owner.getRecordComponents()))
                .filter(c -> c.getName().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static void collect(Type type, Map<String, Class<?>> records) {
        if (type instanceof ParameterizedType list) {
            collect(list.getActualTypeArguments()[0], records);
        } else if (type instanceof Class<?> owner && owner.isRecord()) {
            String packaged = owner.getPackageName();
            String name = packaged.substring(packaged.lastIndexOf('.') + 1) + "." + owner.getSimpleName();
            if (records.putIfAbsent(name, owner) == null) {
                Arrays.stream(owner.getRecordComponents()).forEach(c -> collect(c.getGenericType(), records));
            }
        }
    }

    /** Of several with one name the further ones are counted; what is absent is not said. */
    @Test
    void furtherElementsAreCounted() {
        BillLine line = RESULT.billOfMaterials().required().lines().getFirst();
        var element = new Step.Element(line.id() + "#2", 1, line);
        assertThat(PartWords.element(RESULT.billOfMaterials().required(), "lines", element))
                .isEqualTo("/bill line " + line.item() + " (required) (2)");
        assertThat(PartWords.member(RESULT, "duty")).isNull();
    }
}
