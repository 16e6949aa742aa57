package io.axiswright.app.wire;

import static io.axiswright.engine.finding.FaultCode.DUPLICATE_MEMBER;
import static io.axiswright.engine.finding.FaultCode.INCONSISTENT;
import static io.axiswright.engine.finding.FaultCode.MISSING;
import static io.axiswright.engine.finding.FaultCode.OUT_OF_RANGE;
import static io.axiswright.engine.finding.FaultCode.UNKNOWN_MEMBER;
import static io.axiswright.engine.finding.FaultCode.UNKNOWN_VALUE;
import static io.axiswright.engine.finding.FaultCode.WRONG_COUNT;
import static io.axiswright.engine.finding.FaultCode.WRONG_TYPE;
import static io.axiswright.engine.finding.FaultCode.WRONG_UNIT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.axiswright.engine.catalogue.Accessory;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.design.Cycle;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.design.StopZone;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class RecordReaderTest {

    /** RFC 8259, 8.1: JSON that systems exchange is in UTF-8; its byte order mark may be ignored. */
    @Test
    void readsUtf8Alone() {
        String document = "{\"name\": \"Δθ\", \"tag\": \"a\"}";
        record Named(String name, String tag) {}
        for (String charset : List.of("UTF-16LE", "UTF-16BE", "UTF-16", "UTF-32LE", "UTF-32BE")) {
            assertThatThrownBy(() -> RecordReader.read(document.getBytes(Charset.forName(charset)), Named.class))
                    .isInstanceOf(MalformedJson.class);
        }
        var expected = new Named("Δθ", "a");
        assertThat(RecordReader.read(document.getBytes(StandardCharsets.UTF_8), Named.class))
                .isEqualTo(expected);
        assertThat(RecordReader.read(("\uFEFF" + document).getBytes(StandardCharsets.UTF_8), Named.class))
                .isEqualTo(expected);
    }

    private static final String METRE = "{'value':1,'unit':'m'}";
    private static final String DWELL = "{'kind':'DWELL','duration':{'value':1,'unit':'s'}}";

    record Pair(
            @Bounds(min = 0, max = 10) double low,
            @Bounds(min = 0, max = 10) double high) {
        Pair {
            if (low > high) {
                throw new IllegalArgumentException("low " + low + " is above high " + high);
            }
        }
    }

    record Checked(List<Pair> pairs) {
        Checked {
            if (pairs.size() == 3) {
                throw new InvalidDesign(List.of(new Fault("/pairs/2", FaultCode.DUPLICATE_ID, "twice", "once")));
            }
        }
    }

    record Bag(@Count(max = 3) List<String> words) {}

    private static <T> T read(String json, Class<T> type) {
        return RecordReader.read(json.replace('\'', '"').getBytes(StandardCharsets.UTF_8), type);
    }

    private static List<Fault> faults(String json, Class<?> type) {
        InvalidDesign invalid = catchThrowableOfType(InvalidDesign.class, () -> read(json, type));
        assertThat(invalid).as("%s should be refused", json).isNotNull();
        return invalid.faults();
    }

    private static Fault fault(String json, Class<?> type) {
        assertThat(faults(json, type)).hasSize(1);
        return faults(json, type).getFirst();
    }

    private static void check(Fault fault, FaultCode code, String pointer, String detail, String accepted) {
        assertThat(fault.code()).isEqualTo(code);
        assertThat(fault.pointer()).isEqualTo(pointer);
        assertThat(fault.detail()).contains(detail);
        assertThat(fault.accepted()).contains(accepted);
    }

    @Test
    void readsWhatIsRightWhateverTheOrderOfMembers() {
        assertThat(read("{'duration':{'unit':'ms','value':250},'brakeHolds':true,'kind':'DWELL'}", Segment.class))
                .isEqualTo(new Dwell(new Time(0.25), null, null, true));
        assertThat(read("{'kind':'TRIANGULAR'}", MotionLaw.class)).isEqualTo(new Triangular());
    }

    @Test
    void absentAndNullMeanTheSame() {
        String absent = "{'kind':'DWELL','duration':{'value':1,'unit':'s'}}";
        String nulls =
                "{'kind':'DWELL','duration':{'value':1,'unit':'s'},'payload':null,'processEffort':null,'brakeHolds':null}";
        assertThat(read(nulls, Segment.class)).isEqualTo(read(absent, Segment.class));
        assertThat(read("{'words':null}", Bag.class)).isEqualTo(new Bag(List.of()));
    }

    @Test
    void theUnitDecidesBetweenMassAndInertia() {
        Dwell dwell = (Dwell) read(
                "{'kind':'DWELL','duration':{'value':1,'unit':'s'},'payload':{'value':2,'unit':'kg.cm2'}}",
                Segment.class);
        assertThat(dwell.payload()).isEqualTo(new Inertia(2 * 0.0001));
    }

    @Test
    void unknownMemberNamesTheKnownOnes() {
        Fault fault = fault("{'x':" + METRE + ",'y':" + METRE + ",'z':" + METRE + ",'Z/~':3}", Position.class);
        check(fault, UNKNOWN_MEMBER, "/Z~1~0", "\"Z/~\"", "the members x, y, z");
    }

    @Test
    void missingMemberNamesWhatBelongsThere() {
        check(
                fault("{'x':" + METRE + ",'y':" + METRE + "}", Position.class),
                MISSING,
                "/z",
                "no z",
                "the unit m, mm, cm, in or ft");
        check(fault("{'x':" + METRE + ",'y':" + METRE + ",'z':null}", Position.class), MISSING, "/z", "null", "unit");
        check(fault("{}", Cycle.class), MISSING, "/segments", "no segments", "1 to 1000 elements");
        check(
                fault("{'kind':'DWELL','duration':{'value':1}}", Segment.class),
                MISSING,
                "/duration/unit",
                "no unit",
                "s, ms, min, h or d");
        check(
                fault("{'kind':'DWELL','duration':{'unit':'s'}}", Segment.class),
                MISSING,
                "/duration/value",
                "no value",
                "a number");
    }

    @Test
    void everyRepeatedMemberIsNamed() {
        Fault inRecord = fault("{'words':[],'words':['a']}", Bag.class);
        check(inRecord, DUPLICATE_MEMBER, "/words", "more than once", "once");
        Fault inQuantity =
                fault("{'x':" + METRE + ",'y':" + METRE + ",'z':{'value':1,'unit':'m','value':2}}", Position.class);
        check(inQuantity, DUPLICATE_MEMBER, "/z/value", "the number 2", "once");
        Fault kind = fault("{'kind':'TRIANGULAR','kind':'S_CURVE'}", MotionLaw.class);
        check(kind, DUPLICATE_MEMBER, "/kind", "S_CURVE", "once");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{'words':{}}          | /words   | an object",
                "{'words':[1]}         | /words/0 | the number 1",
                "{'words':[[]]}        | /words/0 | an array",
                "{'words':true}        | /words   | the truth value true",
                "[]                    | ``       | an array",
                "12                    | ``       | the number 12",
            })
    void wrongTypeSaysWhatIsThere(String json, String pointer, String detail) {
        check(fault(json, Bag.class), WRONG_TYPE, pointer, detail, "");
    }

    @Test
    void aNumberInQuotesIsNoNumber() {
        check(
                fault("{'kind':'DWELL','duration':{'value':'1','unit':'s'}}", Segment.class),
                WRONG_TYPE,
                "/duration/value",
                "the string \"1\"",
                "a number");
        check(
                fault("{'kind':'DWELL','duration':1}", Segment.class),
                WRONG_TYPE,
                "/duration",
                "the number 1",
                "value and unit");
        check(fault("{'low':true,'high':1}", Pair.class), WRONG_TYPE, "/low", "truth", "at least 0 and at most 10");
    }

    @Test
    void wrongUnitNamesTheRightOnes() {
        check(
                fault("{'kind':'DWELL','duration':{'value':1,'unit':'N.m'}}", Segment.class),
                WRONG_UNIT,
                "/duration/unit",
                "newton metre",
                "s, ms, min, h or d");
        check(
                fault("{'kind':'DWELL','duration':{'value':1,'unit':'fortnight'}}", Segment.class),
                WRONG_UNIT,
                "/duration/unit",
                "\"fortnight\" is not known",
                "s, ms, min, h or d");
        check(
                fault(
                        "{'kind':'DWELL','duration':{'value':1,'unit':'s'},'payload':{'value':1,'unit':'N'}}",
                        Segment.class),
                WRONG_UNIT,
                "/payload/unit",
                "newton",
                "kg, g, lb, oz, kg.m2, kg.cm2, lb.in2 or lb.ft2");
    }

    @Test
    void outOfRangeStatesTheLimitInTheCallersUnit() {
        String site = "{'ambient':{'value':80,'unit':'Cel'},'enclosureAmbient':{'value':40,'unit':'Cel'},'altitude':"
                + METRE + "}";
        check(fault(site, Site.class), OUT_OF_RANGE, "/ambient/value", "80 Cel", "at least -40 and at most 70 Cel");
        check(fault("{'low':1,'high':11}", Pair.class), OUT_OF_RANGE, "/high", "11", "at least 0 and at most 10");
        check(
                fault("{'kind':'DWELL','duration':{'value':0,'unit':'s'}}", Segment.class),
                OUT_OF_RANGE,
                "/duration/value",
                "0 s",
                "at least 0.000001 and at most 86400 s");
    }

    @Test
    void aBoundInAnotherUnitIsNotMissedByRounding() {
        // 70 °C = 158 °F is the bound; the conversion of 158 °F lands above it in the last place
        String site = "{'ambient':{'value':158,'unit':'degF'},'enclosureAmbient':{'value':70,'unit':'Cel'},'altitude':"
                + METRE + "}";
        assertThat(read(site, Site.class).ambient()).isEqualTo(new Temperature(343.15));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999", "-1e999", "1e99999999", "123456789e300000000"})
    void hugeNumbersAreOutOfRangeNotInfinite(String number) {
        Fault fault = fault("{'kind':'DWELL','duration':{'value':" + number + ",'unit':'s'}}", Segment.class);
        check(fault, OUT_OF_RANGE, "/duration/value", number, "a number");
        String place = "{'id':'p','position':{'x':M,'y':M,'z':M},'maxGateways':N}"
                .replace("M", METRE)
                .replace("N", number);
        check(fault(place, Place.class), OUT_OF_RANGE, "/maxGateways", number, "at least 1 and at most 64, whole");
    }

    @Test
    void wholeNumbersMayBeWrittenWithAPoint() {
        String place = "{'id':'p','position':{'x':M,'y':M,'z':M},'maxGateways':N}".replace("M", METRE);
        assertThat(read(place.replace("N", "4.0"), Place.class).maxGateways()).isEqualTo(4);
        check(fault(place.replace("N", "4.5"), Place.class), OUT_OF_RANGE, "/maxGateways", "4.5", "whole");
        check(fault(place.replace("N", "9999999999"), Place.class), OUT_OF_RANGE, "/maxGateways", "9999999999", "64");
    }

    @Test
    void countsOfListsAndTextsAreKept() {
        check(fault("{'words':['a','b','c','d']}", Bag.class), WRONG_COUNT, "/words", "4 elements", "from 0 to 3");
        check(fault("{'segments':[]}", Cycle.class), WRONG_COUNT, "/segments", "0 elements", "from 1 to 1000");
        check(fault("{'words':['  ']}", Bag.class), WRONG_COUNT, "/words/0", "empty", "1 to 200");
        check(fault("{'words':['" + "é".repeat(201) + "']}", Bag.class), WRONG_COUNT, "/words/0", "201", "1 to 200");
        assertThat(read("{'words':['" + "😀".repeat(200) + "']}", Bag.class)
                        .words()
                        .getFirst())
                .hasSize(400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\u0000", "a\\nb", "\\u001b[31m", "\\u0085", "\\ud800"})
    void controlCharactersAndHalvesOfPairsAreRefused(String text) {
        Fault fault = fault("{'words':['x" + text + "']}", Bag.class);
        check(fault, OUT_OF_RANGE, "/words/0", "control character", "printable");
        assertThat(fault.detail()).matches("\\P{Cntrl}*");
    }

    @Test
    void unknownWordsNameTheKnownOnes() {
        String zone = "{'id':'z','category':'CATEGORY_9','reactionTime':@,'decelerationTime':@}"
                .replace("@", "{'value':1,'unit':'s'}");
        check(
                fault(zone, StopZone.class),
                UNKNOWN_VALUE,
                "/category",
                "\"CATEGORY_9\"",
                "CATEGORY_0, CATEGORY_1 or CATEGORY_2");
        check(
                fault("{'kind':'CATAPULT'}", Mechanism.class),
                UNKNOWN_VALUE,
                "/kind",
                "\"CATAPULT\"",
                "SCREW, BELT, RACK_AND_PINION, CONVEYOR, HOIST, ROTARY_TABLE, DIRECT_DRIVE, CRANK, WINDER or CUSTOM");
        check(fault("{}", Mechanism.class), MISSING, "/kind", "no kind", "SCREW");
        check(fault("{'kind':3}", Mechanism.class), WRONG_TYPE, "/kind", "the number 3", "SCREW");
    }

    @Test
    void conductorSizesAreWords() {
        String cable =
                "{'id':'c','description':'d','size':'3 AWG wire','cores':4,'insulation':'PVC_70','outerDiameter':"
                        + METRE + "}";
        check(fault(cable, BulkCable.class), UNKNOWN_VALUE, "/size", "3 AWG wire", "14 AWG");
    }

    @Test
    void moneyIsDecimal() {
        assertThat(accessory("{'amount':'12.50','currency':'EUR'}").price())
                .isEqualTo(new Money(new BigDecimal("12.50"), "EUR"));
        assertThat(accessory("{'amount':0.1,'currency':'USD'}").price())
                .isEqualTo(new Money(new BigDecimal("0.1"), "USD"));
        priceFault("{'amount':'12,50','currency':'EUR'}", WRONG_TYPE, "/price/amount");
        priceFault("{'amount':'-1','currency':'EUR'}", OUT_OF_RANGE, "/price/amount");
        priceFault("{'amount':1e999999999,'currency':'EUR'}", OUT_OF_RANGE, "/price/amount");
        priceFault("{'amount':'1','currency':'XYZ'}", UNKNOWN_VALUE, "/price/currency");
        priceFault("{'currency':'EUR'}", MISSING, "/price/amount");
        priceFault("{'amount':true,'currency':'EUR'}", WRONG_TYPE, "/price/amount");
        priceFault("{'amount':'1','currency':'EUR','vat':1}", UNKNOWN_MEMBER, "/price/vat");
    }

    private static Accessory accessory(String price) {
        return read("{'id':'a','description':'b','price':" + price + "}", Accessory.class);
    }

    private static void priceFault(String price, FaultCode code, String pointer) {
        Fault fault = fault("{'id':'a','description':'b','price':" + price + "}", Accessory.class);
        assertThat(fault.code()).isEqualTo(code);
        assertThat(fault.pointer()).isEqualTo(pointer);
    }

    @Test
    void whatARecordRefusesIsAFaultOfItsPlace() {
        check(
                fault("{'pairs':[{'low':1,'high':2},{'low':2,'high':1}]}", Checked.class),
                INCONSISTENT,
                "/pairs/1",
                "low 2.0 is above high 1.0",
                "agree");
        String three = "{'pairs':[P,P,P]}".replace("P", "{'low':1,'high':2}");
        check(fault(three, Checked.class), FaultCode.DUPLICATE_ID, "/pairs/2", "twice", "once");
    }

    @Test
    void allFaultsAreFoundInTheOrderOfTheDocument() {
        List<Fault> faults =
                faults("{'ratio':0,'efficiency':'high','gearRatoi':3,'inertia':{'value':1,'unit':'kg'}}", Gear.class);
        assertThat(faults)
                .extracting(Fault::pointer)
                .containsExactly("/ratio", "/efficiency", "/gearRatoi", "/inertia/unit");
    }

    @Test
    void aHundredFaultsAreListedAndTheRestCounted() {
        String words = "[1" + ",1".repeat(249) + "]";
        record Long(List<String> words) {}
        InvalidDesign invalid =
                catchThrowableOfType(InvalidDesign.class, () -> read("{'words':" + words + "}", Long.class));
        assertThat(invalid.faults()).hasSize(100);
        assertThat(invalid.omitted()).isEqualTo(150);
    }

    @Test
    void anOverlongListIsOneFault() {
        String words = "[1" + ",1".repeat(4096) + "]";
        record Long(List<String> words) {}
        check(fault("{'words':" + words + "}", Long.class), WRONG_COUNT, "/words", "4097", "from 0 to 4096");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``                      | the document is empty             | 1 | 1",
                "{'words':[}             | the character '}' cannot stand    | 1 | 11",
                "{'words':['a']          | ends too early                    | 1 | 15",
                "{'words':[NaN]}         | NaN and Infinity                  | 1 | 11",
                "{'words':[-Infinity]}   | NaN and Infinity                  | 1 | 11",
                "{'words':[01]}          | no JSON value                     | 1 | 11",
                "{'words':[]} x          | no JSON value                     | 1 | 14",
                "{'words':[]} {}         | something follows the end         | 1 | 14",
                "{words:[]}              | the character 'w' cannot stand    | 1 | 2",
            })
    void whatIsNoJsonIsRefusedWithItsPlace(String json, String reason, int line, int column) {
        MalformedJson malformed = catchThrowableOfType(MalformedJson.class, () -> read(json, Bag.class));
        assertThat(malformed).hasMessageContaining(reason);
        assertThat(malformed.line()).isEqualTo(line);
        assertThat(malformed.column()).isBetween(column, column + 9);
        assertThat(malformed.inWords()).doesNotContain("Feature", "Exception", "jackson");
    }

    @Test
    void nestingHasAnEnd() {
        assertThatThrownBy(() -> read("[".repeat(65) + "]".repeat(65), Bag.class))
                .isInstanceOf(MalformedJson.class)
                .hasMessageContaining("deeper than 64");
        assertThatThrownBy(() -> read("[".repeat(1_000_000), Bag.class)).isInstanceOf(MalformedJson.class);
        check(fault("[".repeat(64) + "]".repeat(64), Bag.class), WRONG_TYPE, "", "an array", "words");
    }

    @Test
    void aTreeIsReadAsItsBytesAre() {
        var tree = JsonMapper.shared().readTree("{\"words\":[\"a\",1.5,true,null]}");
        assertThat(catchThrowableOfType(InvalidDesign.class, () -> RecordReader.read(tree, Bag.class))
                        .faults())
                .isEqualTo(faults(tree.toString(), Bag.class));
    }

    @Test
    void aSegmentOutsideItsListMayBeAskedForByItself() {
        assertThat(read(DWELL, Dwell.class).duration()).isEqualTo(new Time(1));
        check(fault(DWELL.replace("DWELL", "MOVE"), Dwell.class), UNKNOWN_VALUE, "/kind", "MOVE", "DWELL");
    }
}
