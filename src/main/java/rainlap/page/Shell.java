package rainlap.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import rainlap.paper.PageParts;

/** What stands round the body of every page: style, typeface, script, and the policy that lets nothing else run or load. */
final class Shell {
    private Shell() {}

    /**
     * A whole page.
     *
     * @param title plain text
     * @param body markup
     * @param scripts run in order at the end
     * @param served whether a script of ours may talk to the server the page came from
     */
    static String page(String title, String body, List<String> scripts, boolean served) {
        String allowed = scripts.stream().map(s -> "'sha256-" + digest(s) + "'").collect(Collectors.joining(" "));
        String policy = "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:" + (scripts.isEmpty() ? "" : "; script-src " + allowed)
                + (served ? "; connect-src 'self'" : "") + "; base-uri 'none'; form-action 'none'";
        Html out = new Html();
        out.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"")
                .raw(policy).raw("\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n").element("title", title).line();
        out.raw("<link rel=\"icon\" href=\"data:,\">\n<style>\n").raw(PageParts.fonts(title + body))
                .raw(resource("page.css").replace("FAMILIES", PageParts.families())).raw("</style>\n</head>\n<body>\n").raw(body);
        scripts.forEach(s -> out.raw("<script>").raw(s).raw("</script>\n"));
        return out.raw("</body>\n</html>\n").toString();
    }

    private static String digest(String script) {
        try {
            return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    static String resource(String name) {
        try (InputStream in = Shell.class.getResourceAsStream("/page/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
