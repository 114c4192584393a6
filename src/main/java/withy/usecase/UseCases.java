package withy.usecase;

import java.time.Clock;
import withy.core.item.ItemGenerator;

/** All use cases, over one set of ports. */
public record UseCases(
    SetUp setUp,
    SignIn signIn,
    InviteColleague inviteColleague,
    OpenClass openClass,
    HandOverClass handOverClass,
    JoinClass joinClass,
    ComposeDrill composeDrill,
    ForeseeDrill foreseeDrill,
    AssignDrill assignDrill,
    ListAssignments listAssignments,
    NextItem nextItem,
    AnswerItem answerItem,
    ReviewClass reviewClass,
    ShowEvidence showEvidence,
    ShowKind showKind,
    ExplainChoice explainChoice,
    PlanCourse planCourse,
    KeepCourse keepCourse,
    OwnStanding ownStanding,
    JudgeReadiness judgeReadiness,
    StartReadiness startReadiness,
    TalkOver talkOver,
    PractiseAlone practiseAlone,
    ImportWater importWater,
    ListWaters listWaters,
    KeepDrillSet keepDrillSet,
    ImportDrillSet importDrillSet,
    PutToRoom putToRoom,
    AskAgain askAgain) {

  /** The use cases over what is kept in these ports, with items that are drawn from seeds. */
  public static UseCases over(Ports ports, Passwords passwords, Clock clock, Secrets secrets) {
    return over(ports, passwords, clock, secrets, ItemGenerator::item);
  }

  /** The use cases over what is kept in these ports, with items from a source. */
  public static UseCases over(
      Ports ports, Passwords passwords, Clock clock, Secrets secrets, ItemSource source) {
    OpenClass openClass = new OpenClass(ports.classes(), secrets);
    ClassReviews reviews = new ClassReviews(ports.responses(), ports.evidence());
    ReviewClass reviewClass = new ReviewClass(openClass, ports.learners(), reviews);
    ImportWater importWater = new ImportWater(ports.waters(), ports.waterFiles(), clock, secrets);
    KeepDrillSet keepDrillSet = new KeepDrillSet(ports, clock, secrets);
    DrawnAgain drawnAgain = new DrawnAgain(ports, source);
    Rehearsals rehearsals = new Rehearsals(source);
    AssignDrill assignDrill =
        new AssignDrill(
            openClass,
            ports.learners(),
            ports.assignments(),
            ports.responses(),
            clock,
            secrets,
            rehearsals);
    Issuing issuing =
        new Issuing(ports.responses(), ports.issuedItems(), clock, secrets, source, rehearsals);
    return new UseCases(
        new SetUp(ports.instructors(), passwords, secrets),
        new SignIn(ports.instructors(), ports.sessions(), passwords, clock, secrets),
        new InviteColleague(ports, passwords, clock, secrets),
        openClass,
        new HandOverClass(openClass, ports),
        new JoinClass(ports.classes(), ports.learners(), ports.sessions(), clock, secrets),
        new ComposeDrill(source),
        new ForeseeDrill(source, secrets, rehearsals),
        assignDrill,
        new ListAssignments(ports.assignments(), ports.responses(), clock),
        new NextItem(
            ports.classes(),
            ports.assignments(),
            ports.issuedItems(),
            ports.responses(),
            clock,
            issuing,
            source),
        new AnswerItem(ports.assignments(), ports.issuedItems(), ports.responses(), clock, source),
        reviewClass,
        new ShowEvidence(openClass, ports, drawnAgain),
        new ShowKind(openClass, ports.evidence(), reviews, drawnAgain, ShowKind.NEWEST),
        new ExplainChoice(openClass, ports, reviewClass, clock),
        new PlanCourse(openClass, reviews, clock),
        new KeepCourse(openClass, ports.courses(), secrets),
        new OwnStanding(reviews),
        new JudgeReadiness(openClass, ports, reviews),
        new StartReadiness(openClass, ports.assignments(), clock, secrets),
        new TalkOver(assignDrill, openClass, ports.responses(), issuing),
        new PractiseAlone(openClass, ports, reviews, clock, secrets),
        importWater,
        new ListWaters(ports.waters(), ports.waterFiles()),
        keepDrillSet,
        new ImportDrillSet(keepDrillSet, importWater, ports),
        new PutToRoom(openClass, ports, clock, secrets, source),
        new AskAgain(openClass, ports, clock, secrets, source));
  }
}
