package org.potlife.account.internal;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.Signature;
import java.security.interfaces.RSAPublicKey;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;

/** An OpenID provider that vouches for Nora, a planner of the house. */
public class SmallProvider implements QuarkusTestResourceLifecycleManager {

  private static final KeyPair KEYS = keys();
  private static volatile String base;

  private HttpServer server;

  @Override
  public Map<String, String> start() {
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    base = "http://127.0.0.1:" + server.getAddress().getPort();
    server.createContext(
        "/.well-known/openid-configuration",
        exchange ->
            answer(
                exchange,
                "{\"issuer\":\"%1$s\",\"authorization_endpoint\":\"%1$s/authorize\","
                    + "\"token_endpoint\":\"%1$s/token\",\"jwks_uri\":\"%1$s/keys\"}"));
    server.createContext("/keys", exchange -> answer(exchange, key()));
    server.createContext("/token", exchange -> answer(exchange, tokens()));
    server.start();
    return Map.of(
        "quarkus.oidc.tenant-enabled", "true",
        "quarkus.oidc.auth-server-url", base,
        "quarkus.oidc.client-id", "potlife",
        "quarkus.oidc.credentials.secret", "known to this test and to nobody else");
  }

  @Override
  public void stop() {
    server.stop(0);
  }

  /** A token of somebody, signed by the provider. */
  static String token(String name, String groups) {
    long now = Instant.now().getEpochSecond();
    String claims =
        "{\"iss\":\"%s\",\"aud\":\"potlife\",\"sub\":\"1\",\"preferred_username\":\"%s\",\"groups\":%s,\"iat\":%d,\"exp\":%d}"
            .formatted(base, name, groups, now, now + 300);
    String signed =
        text("{\"alg\":\"RS256\",\"kid\":\"1\"}".getBytes(StandardCharsets.UTF_8))
            + "."
            + text(claims.getBytes(StandardCharsets.UTF_8));
    try {
      Signature signature = Signature.getInstance("SHA256withRSA");
      signature.initSign(KEYS.getPrivate());
      signature.update(signed.getBytes(StandardCharsets.US_ASCII));
      return signed + "." + text(signature.sign());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String tokens() {
    String nora = token("nora", "[\"planner\"]");
    return "{\"access_token\":\""
        + nora
        + "\",\"id_token\":\""
        + nora
        + "\",\"token_type\":\"Bearer\",\"expires_in\":300}";
  }

  private static String key() {
    RSAPublicKey key = (RSAPublicKey) KEYS.getPublic();
    return "{\"keys\":[{\"kty\":\"RSA\",\"kid\":\"1\",\"use\":\"sig\",\"alg\":\"RS256\",\"n\":\""
        + text(unsigned(key.getModulus()))
        + "\",\"e\":\""
        + text(unsigned(key.getPublicExponent()))
        + "\"}]}";
  }

  private static byte[] unsigned(BigInteger number) {
    byte[] bytes = number.toByteArray();
    return bytes[0] == 0 ? java.util.Arrays.copyOfRange(bytes, 1, bytes.length) : bytes;
  }

  private static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  private static void answer(HttpExchange exchange, String json) throws IOException {
    byte[] bytes = json.replace("%1$s", base).getBytes(StandardCharsets.UTF_8);
    exchange.getRequestBody().readAllBytes();
    exchange.getResponseHeaders().set("Content-Type", "application/json");
    exchange.sendResponseHeaders(200, bytes.length);
    exchange.getResponseBody().write(bytes);
    exchange.close();
  }

  private static KeyPair keys() {
    try {
      KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
      generator.initialize(2048);
      return generator.generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
