package rungwise.http;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;

/** Asks a service over a real socket. */
final class Wire {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private Wire() {
    }

    static HttpResponse<String> get(Service service, String path) throws IOException, InterruptedException {
        return send(to(service, path));
    }

    static HttpResponse<String> post(Service service, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = to(service, path).header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body));
        for (int i = 0; i < headers.length; i += 2) {
            request.setHeader(headers[i], headers[i + 1]);
        }
        return send(request);
    }

    private static HttpRequest.Builder to(Service service, String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + service.port() + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }
}
