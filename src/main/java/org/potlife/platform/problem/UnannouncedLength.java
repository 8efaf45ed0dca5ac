package org.potlife.platform.problem;

import jakarta.inject.Inject;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/** Refuses a body of unannounced length (sent in chunks) once it has grown over the limit. */
final class UnannouncedLength {

  private final BodyLimit limit;

  @Inject
  UnannouncedLength(BodyLimit limit) {
    this.limit = limit;
  }

  @ServerRequestFilter
  void watch(ContainerRequestContext request) {
    if (request.hasEntity() && request.getLength() < 0) {
      request.setEntityStream(new Counted(request.getEntityStream()));
    }
  }

  private final class Counted extends FilterInputStream {

    private long read;

    Counted(InputStream stream) {
      super(stream);
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int offset, int length) throws IOException {
      int got = in.read(bytes, offset, length);
      read += Math.max(got, 0);
      if (read > limit.bytes()) {
        in.transferTo(OutputStream.nullOutputStream());
        throw new ProblemException(limit.problem());
      }
      return got;
    }
  }
}
