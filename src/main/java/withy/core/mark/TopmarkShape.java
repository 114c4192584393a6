package withy.core.mark;

import withy.core.Term;

/** The shape that a mark carries above its body. */
public enum TopmarkShape implements Term {
  CAN,
  CONE_UP,
  CONE_DOWN,
  SPHERE,
  TWO_SPHERES,
  TWO_CONES_UP,
  TWO_CONES_DOWN,
  TWO_CONES_BASE_TO_BASE,
  TWO_CONES_POINT_TO_POINT,
  X,
  UPRIGHT_CROSS
}
