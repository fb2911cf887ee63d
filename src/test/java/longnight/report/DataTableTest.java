package longnight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DataTableTest {
    private static final String CSV =
            "kit,air [degC],wind [m/s],heat [kJ],each [kJ/g],mass [g],demand [1],from [HH:MM],outcome,price [money]\n"
                    + "5f,-12.3456,2.5,1000,4.184,100,2.14159,22:00,does-not-hold,\n"
                    + "b,as given,,-0.4,,,,,holds-easily,\n"
                    + "# a remark\n";

    @Test
    void figures_are_rounded_to_what_they_are_worth() {
        Page.Grid grid = DataTable.of("all", "all.csv", CSV, Units.METRIC);
        assertThat(grid.columns())
                .containsExactly(
                        "kit",
                        "air [°C]",
                        "wind [m/s]",
                        "heat [kJ]",
                        "each [kJ/g]",
                        "mass [g]",
                        "demand",
                        "from [HH:MM]",
                        "outcome");
        assertThat(grid.rows().get(0))
                .containsExactly("5f", "-12.3", "2.5", "1000", "4.18", "100", "2.14", "22:00", "does not hold");
        assertThat(grid.rows().get(1)).containsExactly("b", "as given", "-", "0", "-", "-", "-", "-", "holds easily");
        assertThat(grid.rows()).hasSize(2);
    }

    @Test
    void imperial_readers_get_their_units() {
        Page.Grid grid = DataTable.of("all", "all.csv", CSV, Units.IMPERIAL);
        assertThat(grid.columns()).contains("air [°F]", "wind [mph]", "heat [kcal]", "each [kcal/oz]", "mass [oz]");
        assertThat(grid.rows().get(0))
                .containsExactly("5f", "9.8", "5.6", "239", "28.3", "3.5", "2.14", "22:00", "does not hold");
    }

    @Test
    void a_long_table_says_where_the_rest_is() {
        String csv =
                "n [1]\n" + IntStream.range(0, 100).mapToObj(String::valueOf).collect(Collectors.joining("\n"));
        Page.Grid grid = DataTable.of("numbers", "n.csv", csv, Units.METRIC);
        assertThat(grid.rows()).hasSize(DataTable.MOST_ROWS).startsWith(List.of("0"));
        assertThat(grid.caption()).isEqualTo("numbers; 40 more rows in n.csv");
    }
}
