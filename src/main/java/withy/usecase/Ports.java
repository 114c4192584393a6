package withy.usecase;

/** All that the use cases need to be kept. */
public record Ports(
    Instructors instructors,
    SchoolClasses classes,
    Learners learners,
    Assignments assignments,
    IssuedItems issuedItems,
    Responses responses,
    Sessions sessions) {}
