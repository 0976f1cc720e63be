package padwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way through the packages, and nothing is kept between two runs. */
class ArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("padwright");

  /** Each package with those of ours that it may use, and why no others. */
  private static final Map<String, Allowed> ORDER = new LinkedHashMap<>();

  private record Allowed(List<String> packages, String because) {}

  static {
    may("measure", "a length is what everything else is made of");
    may("json", "reading JSON knows of text and places, not of pads", "measure");
    may("geometry", "lines and arcs hold for any trade");
    may("geometry.mesh", "a surface is made of points of space and of the plane", "geometry");
    may("material", "a row of the catalogue does not know what is made of it", "measure", "json");
    may(
        "design",
        "what the maker asks for says nothing of how it is made; an outline is lines and arcs",
        "measure",
        "geometry",
        "material");
    String solid = "the solid follows from the design, whatever covers it";
    may("shape", solid, "measure", "geometry", "material", "design");
    String cover = "the cover is developed over the solid, however it is fastened";
    may("cover", cover, "measure", "geometry", "material", "design", "shape");
    may(
        "dome",
        "the domed top is strained whatever holds the cover",
        "measure",
        "geometry",
        "geometry.mesh",
        "material",
        "design",
        "shape",
        "cover");
    String staples = "staples hold the cover that is there; they do not change it";
    may("fastening", staples, "measure", "geometry", "material", "design", "shape", "cover");
    may(
        "pattern",
        "the engine joins the steps and knows neither files nor drawings",
        "measure",
        "geometry",
        "material",
        "design",
        "shape",
        "cover",
        "dome",
        "fastening");
    String drawn = "an outline can be read from a drawing, whatever becomes of it";
    may("drawing", drawn, "measure", "geometry", "design");
    String jobs = "a job can be read and written without working anything out";
    may("jobfile", jobs, "measure", "json", "geometry", "material", "design");
    may(
        "export",
        "a drawing shows what the engine found; it reads no files",
        "measure",
        "geometry",
        "material",
        "design",
        "shape",
        "cover",
        "fastening",
        "pattern");
    may(
        "export.pdf",
        "a page shows the drawings that all writers share",
        "measure",
        "geometry",
        "material",
        "design",
        "shape",
        "cover",
        "fastening",
        "pattern",
        "export");
    may("export.raster", "a picture is made of finished pages, whatever they show", "export.pdf");
    may(
        "output",
        "what is handed out is the same whether a command or the workbench asks for it",
        "json",
        "dome",
        "jobfile",
        "measure",
        "material",
        "design",
        "cover",
        "fastening",
        "pattern",
        "export",
        "export.pdf");
    may(
        "desk.edit",
        "a job is changed without working a part out or showing anything",
        "measure",
        "json",
        "geometry",
        "material",
        "design",
        "shape",
        "drawing",
        "jobfile");
    may(
        "desk.solid",
        "a solid to look at follows from the result alone",
        "measure",
        "geometry",
        "geometry.mesh",
        "design",
        "shape",
        "cover",
        "dome",
        "pattern");
    may(
        "desk.view",
        "where a thing lies in a view is worked out without any toolkit",
        "measure",
        "geometry",
        "material",
        "design",
        "shape",
        "cover",
        "fastening",
        "pattern",
        "export",
        "export.pdf",
        "export.raster",
        "output",
        "desk.edit",
        "desk.solid");
    may(
        "desk.model",
        "what the workbench knows and does, it knows without a window",
        "measure",
        "json",
        "geometry",
        "material",
        "design",
        "shape",
        "cover",
        "fastening",
        "pattern",
        "drawing",
        "jobfile",
        "export",
        "export.pdf",
        "export.raster",
        "output",
        "desk.edit",
        "desk.solid",
        "desk.view");
    may(
        "desk.screen",
        "the window shows what the models hold, and reckons nothing of its own",
        "measure",
        "geometry",
        "material",
        "design",
        "fastening",
        "pattern",
        "export",
        "output",
        "jobfile",
        "shape",
        "desk.edit",
        "desk.solid",
        "desk.view",
        "desk.model");
  }

  private static void may(String name, String because, String... packages) {
    ORDER.put(name, new Allowed(List.of(packages), because));
  }

  @TestFactory
  Stream<DynamicTest> eachPackageUsesOnlyThoseBeforeIt() {
    return ORDER.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> holds(e.getKey(), e.getValue())));
  }

  private static void holds(String name, Allowed allowed) {
    List<String> names = new ArrayList<>(List.of("padwright." + name));
    allowed.packages().forEach(p -> names.add("padwright." + p));
    DescribedPredicate<JavaClass> ours = resideInAPackage("padwright..");
    noClasses()
        .that()
        .resideInAPackage("padwright." + name)
        .should()
        .dependOnClassesThat(
            ours.and(DescribedPredicate.not(resideInAnyPackage(names.toArray(String[]::new)))))
        .because(allowed.because())
        .check(CLASSES);
  }

  @Test
  void noPackageIsOutsideTheOrder() {
    List<String> known = new ArrayList<>(ORDER.keySet());
    known.add("cli");
    assertThat(CLASSES.stream().map(c -> c.getPackageName().replaceFirst("padwright\\.", "")))
        .as("a new package takes its place in the order, or its classes obey no rule")
        .isSubsetOf(known);
  }

  @Test
  void nothingUsesTheCommandLine() {
    noClasses()
        .that()
        .resideOutsideOfPackage("padwright.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("padwright.cli..")
        .because("a program without a terminal must be able to use all the rest")
        .check(CLASSES);
  }

  @Test
  void geometryUsesNothingButTheLanguage() {
    classes()
        .that()
        .resideInAPackage("padwright.geometry..")
        .and()
        .doNotHaveSimpleName("SparseCholesky")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("padwright.geometry..", "java.lang..", "java.util..", "java.math..")
        .because("its answers are checked against another library, and must owe it nothing")
        .check(CLASSES);
  }

  @Test
  void onlyOneClassKnowsTheLibraryOfMatrices() {
    noClasses()
        .that()
        .doNotHaveSimpleName("SparseCholesky")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.ejml..")
        .because("a factor is a factor, whoever made it, and the rest is our own arithmetic")
        .check(CLASSES);
  }

  @Test
  void packagesHaveNoCycles() {
    SlicesRuleDefinition.slices()
        .matching("padwright.(**)")
        .should()
        .beFreeOfCycles()
        .because("a cycle is two packages that cannot be understood one at a time")
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineKnowsItsLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackage("padwright.cli..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("picocli..")
        .because("the parts of the program do not care how they are called")
        .check(CLASSES);
  }

  @Test
  void onlyTheScreenKnowsItsToolkit() {
    noClasses()
        .that()
        .resideOutsideOfPackage("padwright.desk.screen..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "com.sun..")
        .because("what the workbench does must be tested without a window")
        .check(CLASSES);
  }

  @Test
  void onlyThePdfPackageKnowsThePdfLibrary() {
    noClasses()
        .that()
        .resideOutsideOfPackages("padwright.export.pdf..", "padwright.export.raster..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.pdfbox..", "java.awt..")
        .because("loading it costs more time than all figures together")
        .check(CLASSES);
  }

  @Test
  void everyStaticFieldIsFinal() {
    fields()
        .that()
        .areStatic()
        .should()
        .haveModifier(JavaModifier.FINAL)
        .because("what one run leaves behind would change the next")
        .check(CLASSES);
  }

  @Test
  void noStaticFieldIsMadeToChange() {
    noFields()
        .that()
        .areStatic()
        .should()
        .haveRawType(
            DescribedPredicate.describe(
                "that is made to change",
                c ->
                    Stream.of(
                            StringBuilder.class,
                            AtomicInteger.class,
                            AtomicLong.class,
                            AtomicReference.class,
                            ThreadLocal.class,
                            Random.class)
                        .anyMatch(c::isAssignableTo)))
        .because("two jobs worked out side by side must not meet")
        .check(CLASSES);
  }
}
