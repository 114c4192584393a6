package withy.web.pages.lights;

import java.util.List;
import withy.core.light.LightCharacter;

/** A light of each class, in the order of IHO Chart 1, section P 10; alternating lights last. */
final class Examples {
  static final List<LightCharacter> ALL =
      List.of(
              "F W",
              "Oc W 6s",
              "Oc(2) W 8s",
              "Oc(2+3) W 18s",
              "Iso W 4s",
              "Fl W 5s",
              "Fl(3) W 12s",
              "Fl(2+1) W 10s",
              "LFl W 10s",
              "LFl(2) W 20s",
              "Q W",
              "Q(3) W 10s",
              "Q(6)+LFl W 15s",
              "IQ W 12s",
              "VQ W",
              "VQ(3) W 5s",
              "VQ(6)+LFl W 10s",
              "IVQ W 10s",
              "UQ W",
              "IUQ W 10s",
              "Mo(A) W 8s",
              "FFl W 10s",
              "Al WR 6s",
              "Al.Fl WR 8s",
              "Al.Oc BuY 3s")
          .stream()
          .map(LightCharacter::parse)
          .toList();

  private Examples() {}
}
