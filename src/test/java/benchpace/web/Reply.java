package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;

/** What the board answered, with the questions tests ask of it. */
public record Reply(int status, HttpResponse<String> response) {

    static Reply of(HttpResponse<String> response) {
        return new Reply(response.statusCode(), response);
    }

    public String body() {
        return response.body();
    }

    public Optional<String> header(String name) {
        return response.headers().firstValue(name);
    }

    public List<String> headers(String name) {
        return response.headers().allValues(name);
    }

    public JsonNode json() {
        try {
            return Json.read(body());
        } catch (JsonProcessingException e) {
            throw new AssertionError("no JSON: " + status + " " + body(), e);
        }
    }

    public String text(String field) {
        return json().path(field).asText();
    }

    public Reply ok() {
        assertThat(status).as(body()).isBetween(200, 299);
        return this;
    }

    public long seq() {
        return ok().json().get("seq").longValue();
    }

    /**
     * The answer is a problem as RFC 9457 describes it: its media type, {@code type}, {@code title} and {@code detail}
     * as text, and a {@code status} that equals the status of the answer (section 3.1).
     */
    public Reply problem(int expected, String code) {
        assertThat(status).as(body()).isEqualTo(expected);
        assertThat(header("Content-Type")).get().asString().startsWith("application/problem+json");
        JsonNode problem = json();
        assertThat(problem.path("type").textValue()).as(body()).isEqualTo("urn:benchpace:" + code);
        assertThat(problem.path("title").textValue()).isNotBlank();
        assertThat(problem.path("detail").textValue()).isNotBlank().doesNotContain("Exception", "benchpace.");
        assertThat(problem.path("status").isInt()).isTrue();
        assertThat(problem.path("status").intValue()).isEqualTo(expected);
        return this;
    }

    public Reply detail(String part) {
        assertThat(text("detail")).contains(part);
        return this;
    }
}
