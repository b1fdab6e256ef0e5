package org.nestyear.app.web;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A keeper's browser without a screen: keeps its session, follows redirects, sends forms with their proof. */
final class Caller {
    private static final String BOUNDARY = "a-boundary-no-file-holds";

    private final String root;
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();
    private final String proof;

    Caller(WebServer.Running server) throws IOException, InterruptedException {
        this.root = "http://127.0.0.1:" + server.port();
        client.send(HttpRequest.newBuilder(URI.create(server.address())).build(), BodyHandlers.discarding());
        this.proof = hidden(get("/seasons").body(), "_csrf");
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(root + path)).build(), BodyHandlers.ofString());
    }

    HttpResponse<String> post(String path, Map<String, String> form) throws IOException, InterruptedException {
        List<String> pairs = new ArrayList<>(List.of("_csrf=" + encode(proof)));
        form.forEach((name, value) -> {
            for (String one : value.split("\\|\\|", -1)) {
                pairs.add(encode(name) + "=" + encode(one));
            }
        });
        return postRaw(path, String.join("&", pairs));
    }

    HttpResponse<String> postRaw(String path, String body) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(root + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    /** Sends a form with one file in the field {@code file}. */
    HttpResponse<String> upload(String path, Map<String, String> form, String fileName, byte[] file)
            throws IOException, InterruptedException {
        StringBuilder head = new StringBuilder();
        Map<String, String> all = new LinkedHashMap<>(form);
        all.put("_csrf", proof);
        all.forEach((name, value) -> head.append("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"")
                .append(name)
                .append("\"\r\nContent-Type: text/plain; charset=UTF-8\r\n\r\n")
                .append(value)
                .append("\r\n"));
        head.append("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"")
                .append(fileName)
                .append("\"\r\nContent-Type: text/csv\r\n\r\n");
        return client.send(
                HttpRequest.newBuilder(URI.create(root + path))
                        .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                        .POST(BodyPublishers.concat(
                                BodyPublishers.ofString(head.toString()),
                                BodyPublishers.ofByteArray(file),
                                BodyPublishers.ofString("\r\n--" + BOUNDARY + "--\r\n")))
                        .build(),
                BodyHandlers.ofString());
    }

    /** The value of the first hidden field of this name on a page. */
    static String hidden(String page, String name) {
        Matcher field =
                Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(page);
        if (!field.find()) {
            throw new AssertionError("no field " + name + " on the page");
        }
        return field.group(1);
    }

    /** The text of a page without its markup. */
    static String text(String page) {
        return page.replaceAll("(?s)<script.*?</script>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&lt;", "<")
                .replace("&amp;", "&")
                .replaceAll("[ \\n]+", " ");
    }

    static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    /** A site with one house, and the address of the site's entry. */
    String site(String name) throws IOException, InterruptedException {
        HttpResponse<String> saved = post(
                "/records/entry/site/" + UUID.randomUUID(),
                Map.of(
                        "revision",
                        "0",
                        "act",
                        UUID.randomUUID().toString(),
                        "who",
                        "Ada",
                        "f-name",
                        name,
                        "f-latitude_deg",
                        "50.1",
                        "f-longitude_deg",
                        "8.2",
                        "f-zone",
                        "UTC"));
        post(
                "/records/entry/house/" + UUID.randomUUID(),
                Map.of(
                        "revision",
                        "0",
                        "act",
                        UUID.randomUUID().toString(),
                        "who",
                        "Ada",
                        "f-site",
                        name,
                        "f-name",
                        "Long reeds"));
        return saved.uri().getPath();
    }
}
