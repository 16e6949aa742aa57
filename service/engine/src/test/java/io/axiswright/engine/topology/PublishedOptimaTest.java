package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.RouteMetric;
import io.axiswright.engine.design.RouteRule;
import io.axiswright.engine.quantity.Length;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.StringTokenizer;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published location problems, told as layouts. OR-Library (J. E. Beasley, JORS 41 (1990) 1069-1072); optima from the files
 * themselves and from the tables named at each test.
 */
class PublishedOptimaTest {

    /** Deterministic seconds: proofs, not speed, are tested here. */
    private static final double SEARCH_LIMIT = 60;

    /**
     * Capacitated p-median: I. H. Osman, N. Christofides, Int. Trans. in Operational Research 1 (1994) 317-336; best known
     * value in line 1 of each file. A median is the only gateway on a host port; its capacity is the port's command rate,
     * a customer's demand the axis's; distances are Euclidean and cut to whole numbers.
     */
    @ParameterizedTest
    @Tag("slow")
    @CsvSource({"01, 713", "03, 751", "05, 664", "07, 787", "10, 829"})
    void capacitatedMedians(String problem, int published) {
        TopologyRequest request = median(problem);

        TopologyResult result = new LayoutPlanning(SEARCH_LIMIT).plan(request);

        assertThat(result.method()).isEqualTo(LayoutMethod.PROVEN_OPTIMAL);
        assertThat(requireNonNull(result.cost()).amount()).isEqualByComparingTo(BigDecimal.valueOf(published));
        LayoutChecker.check(request, result);
    }

    /** The same with a hundred customers: within a hundredth of the best known value, and the bound does not exceed it. */
    @ParameterizedTest
    @Tag("slow")
    @CsvSource({"11, 1006", "13, 1026", "15, 1091", "17, 1034", "20, 1005"})
    void capacitatedMediansOfAHundred(String problem, double published) {
        TopologyRequest request = median(problem);

        TopologyResult result = new LayoutPlanning(SEARCH_LIMIT / 2).plan(request);

        double cost = requireNonNull(result.cost()).amount().doubleValue();
        double bound = requireNonNull(result.bound()).amount().doubleValue();
        assertThat(cost).isBetween(published, 1.01 * published);
        assertThat(bound).isLessThanOrEqualTo(published);
        assertThat(requireNonNull(result.gap()).si()).isCloseTo((cost - bound) / cost, within(1e-9));
        LayoutChecker.check(request, result);
    }

    @ParameterizedTest
    @CsvSource({"01, 713", "03, 751", "05, 664", "07, 787", "10, 829"})
    void theHeuristicBracketsTheMedians(String problem, double published) {
        TopologyRequest request = LayoutPlanningTest.withEffort(median(problem), LayoutEffort.HEURISTIC);

        TopologyResult result = new LayoutPlanning().plan(request);

        assertThat(requireNonNull(result.bound()).amount().doubleValue())
                .isLessThanOrEqualTo(published)
                .isGreaterThan(0.9 * published);
        assertThat(requireNonNull(result.cost()).amount().doubleValue())
                .isGreaterThanOrEqualTo(published)
                .isLessThan(1.1 * published);
        LayoutChecker.check(request, result);
    }

    /**
     * Capacitated warehouses, each customer on one: data of J. E. Beasley, EJOR 33 (1988) 314-325; single-source optima
     * from the repository Oscar-Oliveira/OR-Datasets, Facility-Location/SSCFLP/formatted/Lib_3/os, printed to two decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "61, 932615.75", "62, 977799.40", "63, 1014099.61", "64, 1053197.44",
        "101, 796648.44", "102, 854704.20", "103, 893782.11", "104, 928941.75"
    })
    void warehousesOfOneSource(String problem, double published) {
        LayoutModel model = warehouses(problem);
        var solver =
                new BothSolvers(new PlainSolver(SearchBreadth.WIDE), new ExactSolver(SEARCH_LIMIT, SearchGate.open()));

        LayoutSolver.Answer answer = solver.solve(model, null);

        Layout layout = Objects.requireNonNull(answer.layout());
        long cost = Score.of(model, layout).cost();
        assertThat(cost / 1e5).isCloseTo(published, within(0.0051));
        assertThat(answer.bound()).isEqualTo(cost);
        assertThat(new PlainSolver(SearchBreadth.WIDE).solve(model, null).bound())
                .isLessThanOrEqualTo(cost);
    }

    @Test
    void theFilesAreTheOnesPublished() {
        assertThat(tokens("capacitated-p-median/pmedcap01.txt").subList(0, 5))
                .containsExactly("1", "713", "50", "5", "120");
        assertThat(tokens("capacitated-warehouse/cap61.txt").subList(0, 2)).containsExactly("16", "50");
    }

    private static TopologyRequest median(String problem) {
        List<String> tokens = tokens("capacitated-p-median/pmedcap" + problem + ".txt");
        int count = Integer.parseInt(tokens.get(2));
        int medians = Integer.parseInt(tokens.get(3));
        var request = new TopologyRequests();
        request.route = new RouteRule(RouteMetric.STRAIGHT, 1, new Length(0));
        for (int k = 0; k < count; k++) {
            double x = Double.parseDouble(tokens.get(5 + 4 * k + 1));
            double y = Double.parseDouble(tokens.get(5 + 4 * k + 2));
            double demand = Double.parseDouble(tokens.get(5 + 4 * k + 3));
            request.axis(x, y, null, false, demand).place(x, y, 1);
        }
        for (int k = 0; k < medians; k++) {
            request.port(Double.parseDouble(tokens.get(4)));
        }
        request.type(0, count, 1, 0, StopScope.NONE).cable(CableUse.HOST, 900, 0);
        for (int metre = 0; metre <= 142; metre++) {
            request.cable(CableUse.SPUR, metre + 0.9999, metre);
        }
        return request.build();
    }

    private static LayoutModel warehouses(String problem) {
        var tokens = new ArrayList<>(tokens("capacitated-warehouse/cap" + problem + ".txt"));
        Collections.reverse(tokens);
        int sites = Integer.parseInt(tokens.removeLast());
        int customers = Integer.parseInt(tokens.removeLast());
        var capacity = new long[sites];
        var open = new long[1][sites];
        for (int site = 0; site < sites; site++) {
            capacity[site] = Long.parseLong(tokens.removeLast());
            open[0][site] = money(tokens.removeLast());
        }
        var axes = new ArrayList<LayoutModel.Axis>();
        var spur = new long[customers][sites];
        for (int customer = 0; customer < customers; customer++) {
            axes.add(new LayoutModel.Axis(false, -1, Long.parseLong(tokens.removeLast())));
            for (int site = 0; site < sites; site++) {
                spur[customer][site] = money(tokens.removeLast());
            }
        }
        assertThat(tokens).isEmpty();
        var room = new int[sites];
        Arrays.fill(room, 1);
        var far = new long[sites][sites];
        for (long[] row : far) {
            Arrays.fill(row, LinkTable.FAR);
        }
        return new LayoutModel(
                axes,
                List.of(new LayoutModel.Type(0, customers, 1, 0, StopScope.NONE)),
                room,
                capacity,
                new LinkTable(open, new long[1][sites]),
                new LinkTable(far, new long[sites][sites]),
                new LinkTable(spur, new long[customers][sites]));
    }

    private static long money(String amount) {
        return new BigDecimal(amount).movePointRight(5).longValueExact();
    }

    private static List<String> tokens(String file) {
        try (var in = Objects.requireNonNull(PublishedOptimaTest.class.getResourceAsStream("/topology/" + file))) {
            var words = new StringTokenizer(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return Collections.list(words).stream().map(Object::toString).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
