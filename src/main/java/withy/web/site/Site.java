package withy.web.site;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import withy.usecase.UseCases;
import withy.web.Limits;
import withy.web.Metrics;
import withy.web.Route;
import withy.web.RouteGroup;
import withy.web.pages.PageRenderer;
import withy.web.pages.colleagues.SchoolPages;
import withy.web.pages.courses.CoursePages;
import withy.web.pages.drillsets.DrillSetPages;
import withy.web.pages.evidence.EvidencePages;
import withy.web.pages.evidence.KindPages;
import withy.web.pages.instructor.AccountPages;
import withy.web.pages.instructor.AssignmentPages;
import withy.web.pages.instructor.ClassPages;
import withy.web.pages.instructor.ComposePages;
import withy.web.pages.instructor.LearnerPages;
import withy.web.pages.instructor.PlanPages;
import withy.web.pages.instructor.ReviewPages;
import withy.web.pages.learner.AnswerPages;
import withy.web.pages.learner.DrillPages;
import withy.web.pages.learner.JoinPages;
import withy.web.pages.lights.LightPages;
import withy.web.pages.marks.MarkPages;
import withy.web.pages.wall.WallPages;
import withy.web.pages.waters.WaterPages;

/** All that people see. */
public final class Site implements RouteGroup {
  private final List<RouteGroup> groups;

  /**
   * The pages over the use cases.
   *
   * @param pages what they are written with; it shows the server's refusals as well
   */
  public Site(PageRenderer pages, UseCases useCases, Limits limits, Metrics metrics, Clock clock) {
    this.groups =
        List.of(
            new JoinPages(pages, useCases, limits),
            new DrillPages(pages, useCases, clock),
            new AnswerPages(pages, useCases, limits, metrics, clock),
            new AccountPages(pages, useCases, limits),
            new SchoolPages(pages, useCases, limits),
            new ClassPages(pages, useCases),
            new ComposePages(pages, useCases),
            new PlanPages(pages, useCases),
            new AssignmentPages(pages, useCases),
            new ReviewPages(pages, useCases),
            new LearnerPages(pages, useCases),
            new EvidencePages(pages, useCases),
            new KindPages(pages, useCases),
            new WaterPages(pages, useCases),
            new DrillSetPages(pages, useCases),
            new CoursePages(pages, useCases),
            new LightPages(pages),
            new MarkPages(pages),
            new WallPages(pages, useCases));
  }

  @Override
  public List<Route> routes() {
    List<Route> all = new ArrayList<>();
    groups.forEach(group -> all.addAll(group.routes()));
    return all;
  }
}
