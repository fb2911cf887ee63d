package longnight.outdoors.law;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import longnight.proof.StandardTable;

/** The wind chill index is no temperature of anything: no heat balance may read it. */
@AnalyzeClasses(packages = "longnight", importOptions = ImportOption.DoNotIncludeTests.class)
class WindChillStaysOutTest {

    @ArchTest
    static final ArchRule only_the_face_warning_and_the_page_read_it = noClasses()
            .that()
            .resideOutsideOfPackages("longnight.report..", "longnight.cli..")
            .and()
            .doNotHaveFullyQualifiedName(FaceFreezing.class.getName())
            .and()
            .doNotHaveFullyQualifiedName(WindChill.class.getName())
            .and()
            .areNotAssignableTo(StandardTable.Kind.class) // holds the printed charts against it
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName(WindChill.class.getName())
            .because("an index with a walking speed and a bare face in it would make a sitter in a parka too cold");
}
