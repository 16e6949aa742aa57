package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One small document, changed in one place at a time: every kind of break is told, and nothing else is. */
class ApiBreaksTest {

    private static final String DOCUMENT = """
            {'paths': {
              '/machines': {
                'get': {'operationId': 'list',
                  'parameters': [{'name': 'limit', 'in': 'query', 'schema': {'type': 'integer', 'maximum': 100, 'default': 20}}],
                  'responses': {'200': {'headers': {'Link': {'required': true, 'schema': {'type': 'string'}}}, 'content': {'application/json': {'schema': {'$ref': '#/components/schemas/Machine'}}}}}},
                'post': {'operationId': 'add',
                  'requestBody': {'content': {'application/json': {'schema': {'$ref': '#/components/schemas/NewMachine'}}}},
                  'responses': {'201': {'content': {'application/json': {'schema': {'$ref': '#/components/schemas/Machine'}}}},
                                '409': {'description': 'no'}}}}},
             'components': {'schemas': {
               'Machine': {'type': 'object', 'required': ['id'], 'properties': {
                 'id': {'type': 'string'}, 'made': {'type': 'string', 'format': 'date-time'}, 'mode': {'type': 'string', 'enum': ['SLOW', 'FAST']},
                 'parts': {'type': 'array', 'items': {'$ref': '#/components/schemas/Machine'}}}},
               'NewMachine': {'type': 'object', 'additionalProperties': false, 'required': ['name'], 'properties': {
                 'name': {'type': 'string', 'maxLength': 200}, 'speed': {'type': 'number', 'minimum': 0},
                 'wanted': {'type': 'string', 'enum': ['CALM', 'HASTY']},
                 'drive': {'oneOf': [{'$ref': '#/components/schemas/Belt'}, {'$ref': '#/components/schemas/Screw'}],
                   'discriminator': {'propertyName': 'kind', 'mapping': {'BELT': '#/components/schemas/Belt'}}},
                 'axes': {'type': 'array', 'items': {'type': 'string'}},
                 'free': {'type': 'object'}}},
               'Belt': {'type': 'object', 'properties': {'width': {'type': 'number'}}},
               'Screw': {'type': 'object', 'properties': {'lead': {'type': ['number', 'string']}}}}}}
            """;

    private static JsonNode changed(String from, String to) {
        assertThat(DOCUMENT).contains(from);
        return json(DOCUMENT.replace(from, to));
    }

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text.replace('\'', '"'));
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "'get': {'operationId': 'list'; 'put': {'operationId': 'list'; GET /machines: operation removed",
                "'/machines': {; '/machine': {; GET /machines: operation removed",
                "'operationId': 'add'; 'operationId': 'create'; POST /machines: operationId became",
                "'409': {; '410': {; POST /machines: status 409 removed",
                "'headers': {'Link': {'required': true, 'schema': {'type': 'string'}}}; 'headers': {}; GET /machines 200: header Link removed",
                "'in': 'query'; 'in': 'header'; GET /machines: parameter query limit removed",
                "'name': 'limit', ; 'name': 'limit', 'required': true, ; GET /machines: parameter query limit must be sent now",
                "'maximum': 100; 'maximum': 50; GET /machines query limit: maximum narrowed from 100 to 50",
                "'requestBody': {'content': {'application/json'; 'requestBody': {'content': {'text/csv';"
                        + " POST /machines body: media type application/json removed",
                "'requestBody': {; 'requestBody': {'required': true, ; POST /machines: a body must be sent now",
                "'required': ['id']; 'required': []; .id: need not be in the answer any more",
                "'id': {'type': 'string'}, ; ``; .id: member removed",
                "'id': {'type': 'string'}; 'id': {'type': 'integer'}; .id: type [string] became [integer]",
                "'id': {'type': 'string'}; 'id': {'type': ['string', 'null']}; .id: type [string] became",
                "'required': ['name']; 'required': ['name', 'speed']; body.speed: must be sent now",
                "'speed': {'type': 'number', 'minimum': 0},; ``; body.speed: member removed",
                "'speed': {'type': 'number'; 'speed': {'type': 'integer'; body.speed: type [number] became [integer]",
                "'minimum': 0; 'minimum': 1; body.speed: minimum narrowed from 0 to 1",
                "'minimum': 0; 'minimum': 0, 'maximum': 9; body.speed: maximum narrowed from",
                "'maxLength': 200; 'maxLength': 100; body.name: maxLength narrowed from 200 to 100",
                "'maxLength': 200; 'maxLength': 200, 'pattern': 'x'; body.name: another pattern",
                "['CALM', 'HASTY']; ['CALM']; body.wanted: words no longer taken: [HASTY]",
                ", {'$ref': '#/components/schemas/Screw'}; ``; body.drive: choice #/components/schemas/Screw removed",
                "['number', 'string']; ['number']; .lead: type",
                "'width': {'type': 'number'}; 'breadth': {'type': 'number'}; .width: member removed",
                "'free': {'type': 'object'}; 'free': {'type': 'object', 'additionalProperties': false};"
                        + " body.free: no further members are taken any more",
                "'default': 20; 'default': 50; GET /machines query limit: default 20 became 50",
                "'required': true, 'schema': {'type': 'string'}; 'schema': {'type': 'string'};"
                        + " GET /machines 200: header Link need not be there any more",
                "{'required': true, 'schema': {'type': 'string'}}; {'required': true, 'schema': {'type': 'integer'}};"
                        + " GET /machines 200 Link: type [string] became [integer]",
                "'date-time'; 'date'; .made: another format",
                "'string', 'format': 'date-time'; 'string'; .made: another format",
                "'parts': {'type': 'array', 'items': {'$ref': '#/components/schemas/Machine'}}; 'parts': {'type': 'array'};"
                        + " .parts[]: may be anything now",
                "'array', 'items': {'type': 'string'}; 'array', 'uniqueItems': true, 'items': {'type': 'string'};"
                        + " body.axes: elements must differ now",
                "'minimum': 0; 'minimum': 0, 'multipleOf': 5; body.speed: multipleOf narrowed from",
                "'maxLength': 200; 'maxLength': 200, 'not': {'const': 'x'}; body.name: not is asked for now",
                "'free': {'type': 'object'}; 'free': {'type': 'object', 'oneOf': [{'$ref': '#/components/schemas/Belt'}]};"
                        + " body.free: oneOf is asked for now",
                "'propertyName': 'kind'; 'propertyName': 'type'; body.drive: another discriminator",
                "'BELT': '#/components/schemas/Belt'; 'BELT': '#/components/schemas/Screw'; body.drive: BELT means another choice"
            })
    void tellsABreak(String from, String to, String told) {
        assertThat(ApiBreaks.between(json(DOCUMENT), changed(from, to))).anyMatch(line -> line.contains(told));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "'paths': {; 'paths': {'/more': {'get': {}}, ",
                "'409': {; '503': {}, '409': {",
                "'parameters': [; 'parameters': [{'name': 'sort', 'in': 'query'}, ",
                "'id': {'type': 'string'}; 'id': {'type': 'string'}, 'further': {'type': 'string'}",
                "'required': ['id']; 'required': ['id', 'mode']",
                "'speed': {; 'further': {'type': 'number'}, 'speed': {",
                "'required': ['name']; 'required': []",
                "'maxLength': 200; 'maxLength': 300",
                "'minimum': 0; 'minimum': -1",
                "'speed': {'type': 'number'; 'speed': {'type': ['number', 'string']",
                "['CALM', 'HASTY']; ['CALM', 'HASTY', 'FRANTIC']",
                "['SLOW', 'FAST']; ['SLOW', 'FAST', 'CRAWL']",
                "{'$ref': '#/components/schemas/Belt'}, ; {'$ref': '#/components/schemas/Rack'}, {'$ref': '#/components/schemas/Belt'}, ",
                "'additionalProperties': false; 'additionalProperties': true"
            })
    void letsTheApiGrow(String from, String to) {
        assertThat(ApiBreaks.between(json(DOCUMENT), changed(from, to))).isEmpty();
    }

    @Test
    void theSameDocumentBreaksNothing() {
        assertThat(ApiBreaks.between(json(DOCUMENT), json(DOCUMENT))).isEmpty();
    }
}
