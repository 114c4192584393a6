package withy.drawing;

/** An upright box in a picture. */
record Box(double left, double top, double right, double bottom) {
  static Box around(Vec middle, double width, double height) {
    return new Box(
        middle.x() - width / 2,
        middle.y() - height / 2,
        middle.x() + width / 2,
        middle.y() + height / 2);
  }

  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  Vec middle() {
    return new Vec((left + right) / 2, (top + bottom) / 2);
  }

  Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  Box moved(Vec by) {
    return new Box(left + by.x(), top + by.y(), right + by.x(), bottom + by.y());
  }

  /** The area that lies in both boxes. */
  double common(Box other) {
    double across = Math.min(right, other.right) - Math.max(left, other.left);
    double down = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return across > 0 && down > 0 ? across * down : 0;
  }

  boolean meets(Box other) {
    return common(other) > 0;
  }

  boolean contains(Vec place) {
    return place.x() >= left && place.x() <= right && place.y() >= top && place.y() <= bottom;
  }

  boolean contains(Box other) {
    return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
  }
}
