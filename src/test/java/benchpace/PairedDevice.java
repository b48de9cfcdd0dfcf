package benchpace;

import benchpace.files.Json;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;

/** A device that asks the real program, and keeps its token over restarts. */
final class PairedDevice {
    private final HttpClient client = HttpClient.newHttpClient();
    private String token = "";

    void pair(Program program, String pin) throws IOException, InterruptedException {
        token = "";
        token = Json.read(ask(program, "/api/pair", "{\"pin\":\"" + pin + "\"}").body()).get("token").textValue();
    }

    void forget() {
        token = "";
    }

    /** @return the id of a class of six */
    String create(Program program) throws IOException, InterruptedException {
        return Json.read(ask(program, "/api/classes", "{\"planId\":\"table-of-six\"}").body()).get("id").textValue();
    }

    /** @param body posted, unless it is empty */
    HttpResponse<String> ask(Program program, String path, String body) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(program.uri(path)).timeout(Duration.ofSeconds(20));
        if (!token.isEmpty()) {
            request.header("Authorization", "Bearer " + token);
        }
        if (!body.isEmpty()) {
            request.POST(HttpRequest.BodyPublishers.ofString(body));
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
