package withy.core.simulation;

/**
 * How well the weak concepts of classes are told, by one estimate of the class's error rate.
 *
 * @param recall share of concepts called weak, of those with an error of more than .30
 * @param falseAlarms share of concepts called weak, of those with an error of less than .22
 * @param classesWithFalseAlarm share of classes in which one is
 * @param falseDiscoveries share with an error of less than .22 of what is called weak, what lies
 *     between counted for neither
 * @param coverage share of concepts whose error lies in the 90 % interval
 */
public record ClassFigures(
    double recall,
    double falseAlarms,
    double classesWithFalseAlarm,
    double falseDiscoveries,
    double coverage) {}
