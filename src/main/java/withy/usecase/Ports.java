package withy.usecase;

/** All that the use cases need to be kept, and who reads the files of waters and drill sets. */
public record Ports(
    Instructors instructors,
    SchoolClasses classes,
    Learners learners,
    Assignments assignments,
    IssuedItems issuedItems,
    Responses responses,
    Turns turns,
    Sessions sessions,
    Invitations invitations,
    Waters waters,
    WaterFiles waterFiles,
    KeptDrillSets drillSets,
    Courses courses,
    DrillSetFiles drillSetFiles,
    Evidence evidence) {}
