package io.axiswright.app.project;

import io.axiswright.app.store.Documents;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A first revision as an older engine might have stored it. */
final class OlderRevision {

    private OlderRevision() {}

    /** Puts the document in place of the project's first revision; the bytes that stand there then. */
    static byte[] store(JdbcClient database, String project, JsonNode document) {
        byte[] old = JsonMapper.shared().writeValueAsBytes(document);
        database.sql("update revision set document = ?, digest = ? where project_id = ? and number = 1")
                .param(old)
                .param(Documents.digest(old))
                .param(UUID.fromString(project))
                .update();
        return old;
    }
}
