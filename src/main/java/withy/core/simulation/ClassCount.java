package withy.core.simulation;

/** Counts what came of one estimate in many classes. */
final class ClassCount {
  private static final double WEAK_FROM = 0.30;
  private static final double SOUND_TO = 0.22;

  private int weak;
  private int weakCalled;
  private int sound;
  private int soundCalled;
  private int all;
  private int covered;
  private int classes;
  private int classesWithAlarm;
  private boolean alarm;

  void add(double error, boolean called, double lower, double upper) {
    all++;
    covered += lower <= error && error <= upper ? 1 : 0;
    if (error > WEAK_FROM) {
      weak++;
      weakCalled += called ? 1 : 0;
    } else if (error < SOUND_TO) {
      sound++;
      soundCalled += called ? 1 : 0;
      alarm |= called;
    }
  }

  void endOfClass() {
    classes++;
    classesWithAlarm += alarm ? 1 : 0;
    alarm = false;
  }

  ClassFigures figures() {
    return new ClassFigures(
        ratio(weakCalled, weak),
        ratio(soundCalled, sound),
        ratio(classesWithAlarm, classes),
        ratio(soundCalled, soundCalled + weakCalled),
        ratio(covered, all));
  }

  private static double ratio(double part, double whole) {
    return whole == 0 ? 0 : part / whole;
  }
}
