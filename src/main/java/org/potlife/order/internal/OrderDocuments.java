package org.potlife.order.internal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.potlife.order.Order;

/** Orders as text for the database, and the hash by which two contents are compared. */
@ApplicationScoped
class OrderDocuments {

  private final ObjectMapper mapper;

  @Inject
  OrderDocuments(ObjectMapper mapper) {
    this.mapper = mapper;
  }

  String write(Object document) {
    try {
      return mapper.writeValueAsString(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  Order read(String text) {
    try {
      return mapper.readValue(text, Order.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A stored order is unreadable", e);
    }
  }

  static String hash(String text) {
    return hash(text.getBytes(StandardCharsets.UTF_8));
  }

  static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
