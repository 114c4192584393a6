package withy;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The map of the house: what each room may use, and what the core must never touch. */
@AnalyzeClasses(packages = "withy", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final List<String> LINE =
      List.of(
          "geometry",
          "light",
          "mark",
          "waterway",
          "hydrography",
          "scenario",
          "item",
          "response",
          "measurement",
          "drill",
          "course",
          "simulation");

  private static final String[] PURE_JDK = {
    "java.lang..",
    "java.util",
    "java.util.function..",
    "java.util.stream..",
    "java.util.regex..",
    "java.math..",
    "org.jspecify.annotations.."
  };

  @ArchTest
  static final ArchRule coreUsesOnlyItselfAndThePureJdk =
      classes()
          .that()
          .resideInAPackage("withy.core..")
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(PURE_JDK)
                  .or(resideInAnyPackage("withy.core.."))
                  .or(named("java.time.Instant", "java.time.Duration", "java.time.LocalDate"))
                  .or(resideInAnyPackage("java.text").and(named("java.text.Normalizer")))
                  .or(resideInAnyPackage("org.apache.commons.statistics..")))
          .because("the rules of the subject must give the same answer everywhere");

  @ArchTest
  static void eachCorePackageUsesOnlyThoseBeforeIt(
      com.tngtech.archunit.core.domain.JavaClasses all) {
    for (int place = 0; place < LINE.size(); place++) {
      List<String> later = new ArrayList<>();
      for (String name : LINE.subList(place + 1, LINE.size())) {
        later.add("withy.core." + name + "..");
      }
      if (!later.isEmpty()) {
        noClasses()
            .that()
            .resideInAPackage("withy.core." + LINE.get(place) + "..")
            .should()
            .dependOnClassesThat(resideInAnyPackage(later.toArray(String[]::new)))
            .because("the line of the core is the sentence of the product")
            .check(all);
      }
    }
  }

  @ArchTest
  static final ArchRule coreNeverAsksForTheTime =
      noClasses()
          .that()
          .resideInAnyPackage("withy.core..", "withy.drawing..", "withy.wording..")
          .should()
          .accessTargetWhere(
              target(
                  "the clock",
                  t ->
                      t.getOwner().getPackageName().equals("java.time") && t.getName().equals("now")
                          || t.getOwner().getFullName().equals("java.time.Clock")
                          || t.getOwner().getFullName().equals("java.lang.System")
                              && (t.getName().equals("currentTimeMillis")
                                  || t.getName().equals("nanoTime"))))
          .because("time is an argument");

  @ArchTest
  static final ArchRule chanceComesOnlyFromASeed =
      noClasses()
          .that()
          .resideInAnyPackage("withy.core..", "withy.drawing..")
          .should()
          .accessTargetWhere(
              target(
                  "chance without a seed",
                  t ->
                      t.getOwner().getFullName().equals("java.lang.Math")
                              && t.getName().equals("random")
                          || t.getOwner().getFullName().equals("java.util.UUID")
                              && t.getName().equals("randomUUID")
                          || t.getOwner().getFullName().equals("java.util.Collections")
                              && t.getName().equals("shuffle")
                          || t.getOwner()
                              .getFullName()
                              .startsWith("java.util.concurrent.ThreadLocalRandom")))
          .because("the same seed gives the same bytes everywhere");

  @ArchTest
  static final ArchRule onlyChanceMakesRandomNumbers =
      noClasses()
          .that()
          .resideInAnyPackage("withy.core..", "withy.drawing..")
          .and()
          .doNotHaveFullyQualifiedName("withy.core.Chance")
          .should()
          .dependOnClassesThat(
              named("java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom"))
          .because("Chance is the one door to random numbers");

  @ArchTest
  static final ArchRule coreUsesStrictMathForInexactFunctions =
      noClasses()
          .that()
          .resideInAnyPackage("withy.core..", "withy.drawing..")
          .should()
          .accessTargetWhere(
              target(
                  "an inexact function of Math",
                  t ->
                      t.getOwner().getFullName().equals("java.lang.Math")
                          && Set.of(
                                  "sin",
                                  "cos",
                                  "tan",
                                  "asin",
                                  "acos",
                                  "atan",
                                  "atan2",
                                  "exp",
                                  "log",
                                  "log10",
                                  "pow",
                                  "cbrt",
                                  "sinh",
                                  "cosh",
                                  "tanh",
                                  "hypot",
                                  "expm1",
                                  "log1p",
                                  "toRadians",
                                  "toDegrees")
                              .contains(t.getName())))
          .because("Math may differ by platform in the last place");

  @ArchTest
  static final ArchRule coreNeverUsesCollectionsOfUnspecifiedOrder =
      noClasses()
          .that()
          .resideInAnyPackage("withy.core..", "withy.drawing..")
          .should()
          .accessTargetWhere(
              target(
                  "a collection whose order is not specified",
                  t ->
                      t.getOwner().isEquivalentTo(HashMap.class)
                          || t.getOwner().isEquivalentTo(HashSet.class)
                          || (t.getOwner().isEquivalentTo(Map.class)
                                  || t.getOwner().isEquivalentTo(Set.class))
                              && (t.getName().equals("of")
                                  || t.getName().equals("ofEntries")
                                  || t.getName().equals("copyOf"))
                          || t.getOwner().isEquivalentTo(Collectors.class)
                              && (t.getName().equals("toSet") || t.getName().equals("toMap"))))
          .because("their order differs from one run to the next");

  @ArchTest
  static final ArchRule drawingUsesOnlyTheCore =
      classes()
          .that()
          .resideInAPackage("withy.drawing..")
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(PURE_JDK)
                  .or(resideInAnyPackage("withy.core..", "withy.drawing.."))
                  .or(resideInAnyPackage("io.nayuki.qrcodegen..")))
          .because("pictures are pure like what they show");

  @ArchTest
  static final ArchRule useCasesKnowNoAdapter =
      noClasses()
          .that()
          .resideInAPackage("withy.usecase..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "withy",
                  "withy.web..",
                  "withy.store..",
                  "withy.catalogue..",
                  "withy.exchange..",
                  "withy.wording..",
                  "withy.drawing.."))
          .because("what people do does not depend on how it is shown or kept");

  @ArchTest
  static final ArchRule wordingAndExchangeKnowOnlyTheCore =
      noClasses()
          .that()
          .resideInAnyPackage("withy.wording..", "withy.exchange..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "withy",
                  "withy.web..",
                  "withy.store..",
                  "withy.catalogue..",
                  "withy.usecase..",
                  "withy.drawing.."))
          .because("words and open formats serve pages and commands alike");

  @ArchTest
  static void adaptersDoNotKnowEachOther(com.tngtech.archunit.core.domain.JavaClasses all) {
    List<String> adapters = List.of("withy.web..", "withy.store..", "withy.catalogue..");
    for (String one : adapters) {
      List<String> others = new ArrayList<>(adapters);
      others.remove(one);
      others.add("withy");
      noClasses()
          .that()
          .resideInAPackage(one)
          .should()
          .dependOnClassesThat(resideInAnyPackage(others.toArray(String[]::new)))
          .because("adapters are strangers; only Main and its commands wire them")
          .check(all);
    }
  }

  @ArchTest
  static final ArchRule onlyTheStoreSpeaksSql =
      noClasses()
          .that()
          .resideOutsideOfPackage("withy.store..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage(
                  "java.sql..", "javax.sql..", "org.jdbi..", "org.flywaydb..", "org.h2.."))
          .because("the database stays behind the ports");

  @ArchTest
  static final ArchRule onlyTheWebSpeaksHttp =
      noClasses()
          .that()
          .resideOutsideOfPackage("withy.web..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "org.thymeleaf.."))
          .because("the server stays behind the pages");

  @ArchTest
  static final ArchRule noPackageCycles = slices().matching("withy.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule onlyCommandsSpeakToTheConsole =
      noClasses()
          .that()
          .resideInAnyPackage(
              "withy.core..", "withy.drawing..", "withy.usecase..", "withy.store..", "withy.web..")
          .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
          .because("standard output carries only the result of a command");

  private static DescribedPredicate<com.tngtech.archunit.core.domain.JavaClass> named(
      String... names) {
    return describe(
        "are " + String.join(", ", names), each -> List.of(names).contains(each.getFullName()));
  }

  private static DescribedPredicate<JavaAccess<?>> target(
      String what, java.util.function.Predicate<AccessTarget> test) {
    return describe(what, access -> test.test(access.getTarget()));
  }
}
