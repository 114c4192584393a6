package withy.core.measurement;

/** How far those who answer an item rightly are those who do well elsewhere. */
public final class PointBiserial {
  private int pairs;
  private double right;
  private double scores;
  private double rightScores;
  private double squares;
  private double least = Double.POSITIVE_INFINITY;
  private double most = Double.NEGATIVE_INFINITY;

  /**
   * Adds one answer.
   *
   * @param correct whether it was right
   * @param score how the same person did; on everything else, for the corrected coefficient
   */
  public void add(boolean correct, double score) {
    add(correct, score, 1);
  }

  /**
   * Adds as many answers alike.
   *
   * @param times 0 or more
   */
  void add(boolean correct, double score, int times) {
    if (times == 0) {
      return;
    }
    pairs += times;
    right += correct ? times : 0;
    scores += times * score;
    rightScores += correct ? times * score : 0;
    squares += times * score * score;
    least = Math.min(least, score);
    most = Math.max(most, score);
  }

  /**
   * The coefficient: the product-moment correlation of right (1) or wrong (0) with the score.
   *
   * @return -1 to 1; NaN where all answers or all scores are alike
   */
  public double coefficient() {
    if (right == 0 || right == pairs || least == most) {
      return Double.NaN;
    }
    double share = right / pairs;
    double mean = scores / pairs;
    double covariance = rightScores / pairs - share * mean;
    double variance = squares / pairs - mean * mean;
    double coefficient = covariance / StrictMath.sqrt(share * (1 - share) * variance);
    return Math.max(-1, Math.min(1, coefficient));
  }
}
