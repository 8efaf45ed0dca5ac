package org.potlife.web.shell;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.function.Function;
import org.potlife.platform.problem.Problem;
import org.potlife.platform.problem.ProblemException;
import org.potlife.platform.problem.Years;

/** Shows a screen, or in its frame why it cannot be shown. */
@ApplicationScoped
public class Screens {

  private final Shells shells;

  @Inject
  Screens(Shells shells) {
    this.shells = shells;
  }

  /** The screen, or a page that says what is wrong. */
  public Response show(String plant, Job job, Function<Shell, TemplateInstance> screen) {
    Shell shell;
    try {
      shell = shells.shell(plant, job);
    } catch (ProblemException e) {
      return html(e.problem().status(), FrameTemplates.noPlant(e.problem().detail()));
    }
    try {
      return html(200, screen.apply(shell));
    } catch (ProblemException e) {
      Problem problem = e.problem();
      return html(
          problem.status(), FrameTemplates.trouble(shell, problem.title(), problem.detail()));
    }
  }

  /**
   * A day from an address.
   *
   * @throws ProblemException 400 when it is none
   */
  public static LocalDate day(String text, LocalDate otherwise) {
    return text == null || text.isBlank() ? otherwise : Years.day("day", text);
  }

  private static Response html(int status, TemplateInstance page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("utf-8"))
        .header("Cache-Control", "no-store")
        .entity(page)
        .build();
  }
}
