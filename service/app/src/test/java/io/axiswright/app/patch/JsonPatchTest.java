package io.axiswright.app.patch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.axiswright.app.problem.Conflict;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** RFC 6902, Appendix A, but for A.13 (two members of one name), which the RFC leaves open; then what it leaves open. */
class JsonPatchTest {

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text.replace('\'', '"'));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A.1 | {'foo':'bar'} | [{'op':'add','path':'/baz','value':'qux'}] | {'baz':'qux','foo':'bar'}",
                "A.2 | {'foo':['bar','baz']} | [{'op':'add','path':'/foo/1','value':'qux'}] | {'foo':['bar','qux','baz']}",
                "A.3 | {'baz':'qux','foo':'bar'} | [{'op':'remove','path':'/baz'}] | {'foo':'bar'}",
                "A.4 | {'foo':['bar','qux','baz']} | [{'op':'remove','path':'/foo/1'}] | {'foo':['bar','baz']}",
                "A.5 | {'baz':'qux','foo':'bar'} | [{'op':'replace','path':'/baz','value':'boo'}] | {'baz':'boo','foo':'bar'}",
                "A.6 | {'foo':{'bar':'baz','waldo':'fred'},'qux':{'corge':'grault'}}"
                        + " | [{'op':'move','from':'/foo/waldo','path':'/qux/thud'}]"
                        + " | {'foo':{'bar':'baz'},'qux':{'corge':'grault','thud':'fred'}}",
                "A.7 | {'foo':['all','grass','cows','eat']} | [{'op':'move','from':'/foo/1','path':'/foo/3'}]"
                        + " | {'foo':['all','cows','eat','grass']}",
                "A.8 | {'baz':'qux','foo':['a',2,'c']}"
                        + " | [{'op':'test','path':'/baz','value':'qux'},{'op':'test','path':'/foo/1','value':2}]"
                        + " | {'baz':'qux','foo':['a',2,'c']}",
                "A.10 | {'foo':'bar'} | [{'op':'add','path':'/child','value':{'grandchild':{}}}]"
                        + " | {'foo':'bar','child':{'grandchild':{}}}",
                "A.11 | {'foo':'bar'} | [{'op':'add','path':'/baz','value':'qux','xyz':123}] | {'foo':'bar','baz':'qux'}",
                "A.14 | {'/':9,'~1':10} | [{'op':'test','path':'/~01','value':10}] | {'/':9,'~1':10}",
                "A.16 | {'foo':['bar']} | [{'op':'add','path':'/foo/-','value':['abc','def']}] | {'foo':['bar',['abc','def']]}",
                "copy | {'a':{'b':1},'c':[]} | [{'op':'copy','from':'/a','path':'/c/0'},{'op':'replace','path':'/a/b','value':2}]"
                        + " | {'a':{'b':2},'c':[{'b':1}]}",
                "whole | {'a':1} | [{'op':'replace','path':'','value':{'b':2}}] | {'b':2}",
                "null | {'a':1} | [{'op':'replace','path':'/a','value':null},{'op':'test','path':'/a','value':null}] | {'a':null}",
                "stays | {'a':1} | [{'op':'move','from':'/a','path':'/a'}] | {'a':1}",
                "numbers | {'a':1.50} | [{'op':'test','path':'/a','value':15e-1}] | {'a':1.50}"
            })
    void makesOfADocumentWhatTheStandardSays(String name, String original, String patch, String result) {
        JsonNode target = json(original);
        assertThat(JsonPatch.apply(target, json(patch))).as(name).isEqualTo(json(result));
        assertThat(target).as("the target stays as it was").isEqualTo(json(original));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A.9 | {'baz':'qux'} | [{'op':'test','path':'/baz','value':'bar'}]",
                "A.15 | {'/':9,'~1':10} | [{'op':'test','path':'/~01','value':'10'}]",
                "nested | {'a':{'b':[1,2]}} | [{'op':'test','path':'/a','value':{'b':[2,1]}}]"
            })
    void aTestThatFailsIsAConflict(String name, String original, String patch) {
        assertThatExceptionOfType(Conflict.class)
                .as(name)
                .isThrownBy(() -> JsonPatch.apply(json(original), json(patch)));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A.12 | [{'op':'add','path':'/baz/bat','value':'qux'}] | /0/path",
                "absent | [{'op':'remove','path':'/nothing'}] | /0/path",
                "absent | [{'op':'replace','path':'/nothing','value':1}] | /0/path",
                "absent | [{'op':'test','path':'/nothing','value':1}] | /0/path",
                "absent | [{'op':'copy','from':'/nothing','path':'/b'}] | /0/from",
                "beyond | [{'op':'add','path':'/list/3','value':1}] | /0/path",
                "end | [{'op':'remove','path':'/list/-'}] | /0/path",
                "index | [{'op':'add','path':'/list/01','value':1}] | /0/path",
                "whole | [{'op':'remove','path':''}] | /0/path",
                "into itself | [{'op':'move','from':'/list','path':'/list/0'}] | /0/from",
                "second | [{'op':'test','path':'/foo','value':'bar'},{'op':'jump','path':'/foo'}] | /1/op",
                "no path | [{'op':'remove'}] | /0/path",
                "no value | [{'op':'add','path':'/b'}] | /0/value",
                "no pointer | [{'op':'remove','path':'foo'}] | /0/path",
                "no text | [{'op':'remove','path':1}] | /0/path",
                "no object | [1] | /0/path",
                "no list | {'op':'remove','path':'/foo'} | ``"
            })
    void aPatchThatCannotBeAppliedSaysWhere(String name, String patch, String pointer) {
        JsonNode target = json("{'foo':'bar','list':[1,2]}");
        assertThatExceptionOfType(InvalidDesign.class)
                .as(name)
                .isThrownBy(() -> JsonPatch.apply(target, json(patch)))
                .satisfies(e -> assertThat(e.faults().getFirst().pointer()).isEqualTo(pointer));
    }

    /** Twenty copies of the whole would be a million times as much. */
    @Test
    void copiesThatGrowWithoutEnd() {
        String copies = IntStream.range(0, 20)
                .mapToObj("{'op':'copy','from':'','path':'/c%d'}"::formatted)
                .collect(Collectors.joining(","));
        JsonNode target = json("{'list':[1,2,3,4,5,6,7,8,9,10]}");
        assertThatExceptionOfType(InvalidDesign.class)
                .isThrownBy(() -> JsonPatch.apply(target, json("[" + copies + "]")))
                .satisfies(e -> assertThat(e.faults().getFirst().code()).isEqualTo(FaultCode.OUT_OF_RANGE))
                .satisfies(e -> assertThat(e.faults().getFirst().pointer()).matches("/1[0-9]/from"));
    }

    /** Each pair of operations puts all there is one deeper. */
    @Test
    void copiesThatNestWithoutEnd() {
        String deeper = IntStream.range(0, 70)
                .mapToObj(k -> "{'op':'add','path':'/p','value':{}},{'op':'move','from':'/t','path':'/p/t'},"
                        + "{'op':'move','from':'/p','path':'/t'}")
                .collect(Collectors.joining(","));
        assertThatExceptionOfType(InvalidDesign.class)
                .isThrownBy(() -> JsonPatch.apply(
                        json("{'t':{}}"), json("[" + deeper + ",{'op':'copy','from':'/t','path':'/c'}]")))
                .satisfies(e -> assertThat(e.faults().getFirst().pointer()).isEqualTo("/210/from"));
        String path = "/a".repeat(100_000);
        assertThatExceptionOfType(InvalidDesign.class)
                .isThrownBy(() -> JsonPatch.apply(json("{}"), json("[{'op':'remove','path':'" + path + "'}]")))
                .satisfies(e -> assertThat(e.faults().getFirst().pointer()).isEqualTo("/0/path"));
    }

    @Test
    void allOrNothing() {
        JsonNode target = json("{'foo':'bar'}");
        JsonNode patch = json("[{'op':'remove','path':'/foo'},{'op':'remove','path':'/foo'}]");
        assertThatExceptionOfType(InvalidDesign.class).isThrownBy(() -> JsonPatch.apply(target, patch));
        assertThat(target).isEqualTo(json("{'foo':'bar'}"));
    }
}
