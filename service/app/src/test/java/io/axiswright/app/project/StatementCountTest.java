package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** How often the main operations go to the database; more would be felt by everybody. */
class StatementCountTest extends ProjectFixture {

    @Autowired
    private EntityManagerFactory factory;

    private Statistics statistics() {
        return factory.unwrap(SessionFactory.class).getStatistics();
    }

    @Test
    void addsARevisionWithTwoReadsAndThreeWrites() {
        String project = openAndGetId();
        String etag = etag(project);
        var revision = revision("counted");
        statistics().clear();

        add(project, etag, revision).statusCode(201);

        // branch, catalogue version; number, head, revision
        assertThat(statistics().getPrepareStatementCount()).isEqualTo(5);
    }

    @Test
    void readsAPageInAsManyStatementsHoweverLong() {
        String project = openAndGetId();
        for (int k = 0; k < 3; k++) {
            add(project, "*", revision("number " + k)).statusCode(201);
        }
        statistics().clear();

        given().get("/v1/projects/{id}/revisions", project).then().statusCode(200);

        // whether the project exists, the page, and its labels
        assertThat(statistics().getPrepareStatementCount()).isEqualTo(3);
    }

    @Test
    void opensAProjectInTwoStatements() {
        statistics().clear();

        openAndGetId();

        // project and main branch
        assertThat(statistics().getPrepareStatementCount()).isEqualTo(2);
    }
}
