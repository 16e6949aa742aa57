package io.axiswright.engine.topology;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Separation;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Why there is no layout: named limits against every way to hang and string up small machines, remedies by building them. */
class ClashTest {

    private static final int TOYS = 100;

    private final LayoutPlanning planning = new LayoutPlanning();

    @Test
    void theNamedLimitsClashAndNoneCanBeLeftOut() {
        int clashes = 0;
        int together = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest request =
                    seed % 5 == 0 ? TopologyRequests.farToy(seed) : tight(TopologyRequests.toy(seed), seed);
            TopologyResult result = planning.plan(request);
            assertThat(result.clash() == null)
                    .as("seed %d", seed)
                    .isEqualTo(!result.gateways().isEmpty() && result.unconnected() == null);
            if (result.clash() == null) {
                continue;
            }
            List<ClashingLimit> clash = result.clash().limits();
            assertThat(result.clash().proof()).as("seed %d", seed).isEqualTo(ClashProof.SMALLEST);
            assertThat(clash).as("seed %d", seed).isNotEmpty();
            assertThat(AnyLayout.exists(request, clash))
                    .as("seed %d: %s", seed, clash)
                    .isFalse();
            for (ClashingLimit limit : clash) {
                List<ClashingLimit> rest =
                        clash.stream().filter(one -> one != limit).toList();
                assertThat(AnyLayout.exists(request, rest))
                        .as("seed %d: %s", seed, rest)
                        .isTrue();
            }
            clashes++;
            together += clash.stream().map(ClashingLimit::limit).distinct().count() > 1 ? 1 : 0;
        }
        assertThat(clashes).as("machines without a layout").isGreaterThan(25);
        assertThat(together).as("of limits of several kinds").isGreaterThan(10);
    }

    @Test
    void limitsOfFewerKindsDoNotClash() {
        int compared = 0;
        for (long seed = 1; seed <= 120; seed++) {
            TopologyRequest request = tight(TopologyRequests.toy(seed), seed);
            Clash clash = planning.plan(request).clash();
            if (clash == null) {
                continue;
            }
            List<LimitKind> kinds =
                    clash.limits().stream().map(ClashingLimit::limit).distinct().toList();
            Map<LimitKind, List<ClashingLimit>> all = everyLimit(request);
            List<LimitKind> named = List.copyOf(all.keySet());
            for (int set = 0; set < 1 << named.size(); set++) {
                if (Integer.bitCount(set) == kinds.size() - 1) {
                    var inForce = new ArrayList<ClashingLimit>();
                    for (int k = 0; k < named.size(); k++) {
                        if ((set >> k & 1) == 1) {
                            inForce.addAll(requireNonNull(all.get(named.get(k))));
                        }
                    }
                    assertThat(AnyLayout.exists(request, inForce))
                            .as("seed %d: %s", seed, inForce)
                            .isTrue();
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(200);
    }

    @Test
    void everyRelaxationLetsALayoutExist() {
        int relaxations = 0;
        int planned = 0;
        for (long seed = 1; seed <= TOYS; seed++) {
            TopologyRequest request =
                    seed % 5 == 0 ? TopologyRequests.farToy(seed) : tight(TopologyRequests.toy(seed), seed);
            Clash clash = planning.plan(request).clash();
            if (clash == null) {
                continue;
            }
            assertThat(clash.relaxations()).as("seed %d", seed).isNotEmpty();
            assertThat(clash.relaxations())
                    .extracting(one -> one.cost().amount())
                    .isSorted();
            for (Relaxation relaxation : clash.relaxations()) {
                TopologyRequest wider = request;
                List<Widening> givenUp = new ArrayList<>();
                for (Widening widening : relaxation.widenings()) {
                    if (widening.limit() == LimitKind.STOP_ZONE || widening.limit() == LimitKind.SPUR_LENGTH) {
                        givenUp.add(widening);
                    } else {
                        wider = widened(wider, widening);
                    }
                }
                assertThat(AnyLayout.exists(wider, allBut(givenUp, wider)))
                        .as("seed %d: %s", seed, relaxation)
                        .isTrue();
                relaxations++;
                if (givenUp.isEmpty() && relaxation.gap().value() == 0 && priced(relaxation)) {
                    assertThat(relaxation.cost().amount().doubleValue())
                            .as("seed %d: %s", seed, relaxation)
                            .isCloseTo(EveryLayout.cheapest(wider)[0], within(1e-6));
                    planned++;
                }
            }
        }
        assertThat(relaxations).isGreaterThan(60);
        assertThat(planned).as("of a cost that was tried").isGreaterThan(25);
    }

    @Test
    void oneHostPortMoreIsNamedWithWhatTheLayoutCostsThen() {
        // Three axes of 3000 commands need a port of 5000 each; there are two. Three gateways, host cables and spurs
        // cost 3·(50 + 5 + 5).
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 5)
                .cable(CableUse.SPUR, 10, 5)
                .port(5000)
                .port(5000)
                .place(5, 0, 3)
                .type(50, 2, 2, 1, StopScope.GATEWAY);
        for (int k = 0; k < 3; k++) {
            request.axis(5, 0, null, false, 3000);
        }

        Clash clash = requireNonNull(planning.plan(request.build()).clash());

        assertThat(clash.limits())
                .extracting(ClashingLimit::limit)
                .containsExactly(LimitKind.HOST_PORTS, LimitKind.COMMAND_RATE);
        assertThat(clash.limits()).extracting(ClashingLimit::pointer).containsOnly("/design/network/host/ports");
        assertThat(clash.relaxations()).hasSize(2);
        // With 6000 a port carries two of them: two gateways, two host cables and three spurs, 2·55 + 15.
        Relaxation faster = clash.relaxations().getFirst();
        assertThat(faster.widenings().getFirst().limit()).isEqualTo(LimitKind.COMMAND_RATE);
        assertThat(requireNonNull(faster.widenings().getFirst().needed()).si()).isEqualTo(6000);
        assertThat(faster.cost().amount()).isEqualByComparingTo("125");
        Relaxation more = clash.relaxations().getLast();
        assertThat(more.widenings().getFirst().limit()).isEqualTo(LimitKind.HOST_PORTS);
        assertThat(requireNonNull(more.widenings().getFirst().needed()).si()).isEqualTo(3);
        assertThat(more.cost().amount()).isEqualByComparingTo("180");
        assertThat(more.gap().value()).isZero();
    }

    @Test
    void aFixedPlaceOutOfReachIsNamedAloneAmongManyAxes() {
        // A3 has to be connected in L2, 19 m away; spur cables end at 10 m. A spur of 19 m counts 10·19/10.
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 30, 5)
                .cable(CableUse.TRUNK, 30, 5)
                .cable(CableUse.SPUR, 10, 10)
                .port(90000)
                .place(0, 0, 1)
                .place(20, 0, 1)
                .type(50, 8, 2, 0, StopScope.NONE);
        for (int k = 0; k < 6; k++) {
            request.axis(1);
        }
        request.fixed = List.of(new FixedPlace("A1", "L1"), new FixedPlace("A3", "L2"));

        Clash clash = requireNonNull(planning.plan(request.build()).clash());

        assertThat(clash.proof()).isEqualTo(ClashProof.SMALLEST);
        assertThat(clash.limits())
                .extracting(ClashingLimit::pointer)
                .containsExactlyInAnyOrder("/design/axes/2/position", "/design/network/fixed/1");
        Relaxation cheapest = clash.relaxations().getFirst();
        assertThat(cheapest.widenings()).extracting(Widening::pointer).containsExactly("/design/network/fixed/1");
        assertThat(cheapest.cost().amount()).isEqualByComparingTo("115");
        Relaxation longer = clash.relaxations().getLast();
        assertThat(longer.widenings()).extracting(Widening::pointer).containsExactly("/design/axes/2/position");
        assertThat(requireNonNull(longer.widenings().getFirst().needed()).si()).isEqualTo(19);
        // Two gateways, host and trunk cable, five spurs of 10 and one of 19.
        assertThat(longer.cost().amount()).isEqualByComparingTo("179");
    }

    @Test
    void onePlaceMoreHelpsAnAxisThatIsFarAway() {
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 30, 5)
                .cable(CableUse.SPUR, 10, 5)
                .port(9000)
                .place(0, 0, 1)
                .type(50, 8, 2, 0, StopScope.NONE)
                .axis(1)
                .axis(25);

        Clash clash = requireNonNull(planning.plan(request.build()).clash());

        assertThat(clash.limits()).extracting(ClashingLimit::pointer).containsExactly("/design/axes/1/position");
        assertThat(clash.relaxations())
                .filteredOn(one -> one.widenings().getFirst().limit() == LimitKind.PLACES)
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.widenings().getFirst().subject()).isEqualTo("A2");
                    // Two gateways, a host and a trunk cable, two spurs.
                    assertThat(one.cost().amount()).isEqualByComparingTo("120");
                });
    }

    @Test
    void twoClashesAtOnceNeedTwoRemedies() {
        // The brakes and the far axis each stand in the way by themselves.
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.TRUNK, 10, 5)
                .cable(CableUse.SPUR, 10, 5)
                .port(9000)
                .place(0, 0, 1)
                .type(50, 8, 1, 0, StopScope.NONE)
                .axis(1, 0, null, true, 1000)
                .axis(25);

        Clash clash = requireNonNull(planning.plan(request.build()).clash());

        assertThat(clash.limits()).hasSize(1);
        assertThat(clash.relaxations())
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.widenings())
                        .extracting(Widening::limit)
                        .containsExactly(LimitKind.BRAKE_OUTPUTS, LimitKind.SPUR_LENGTH));
    }

    @Test
    void aMachineOfRealSizeIsTold() {
        // Forty-eight axes on four ports, of which the trunks are too short by one gateway: places for five gateways of
        // eight.
        TopologyRequests machine = TopologyRequests.machine(48, 5, 4, 7);

        Clash clash = requireNonNull(planning.plan(machine.build()).clash());

        assertThat(clash.proof()).isIn(ClashProof.SMALLEST, ClashProof.IRREDUCIBLE);
        assertThat(clash.limits())
                .extracting(ClashingLimit::limit)
                .contains(LimitKind.DRIVE_PORTS, LimitKind.PLACE_ROOM);
        assertThat(clash.relaxations()).isNotEmpty();
    }

    @Test
    void whatTheSearchDoesNotProveIsNotClaimed() {
        TopologyRequests request = new TopologyRequests()
                .cable(CableUse.HOST, 10, 5)
                .cable(CableUse.SPUR, 10, 5)
                .port(5000)
                .port(5000)
                .place(5, 0, 3)
                .type(50, 2, 2, 1, StopScope.GATEWAY);
        for (int k = 0; k < 3; k++) {
            request.axis(5, 0, null, false, 3000);
        }
        request.searchLimit = new Time(0);

        Clash clash = requireNonNull(planning.plan(request.build()).clash());

        assertThat(clash.proof()).isEqualTo(ClashProof.NONE);
        assertThat(clash.limits()).isEmpty();
        assertThat(clash.relaxations()).isNotEmpty();
    }

    @Test
    void theSameRequestHasTheSameClash() {
        TopologyRequest request = TopologyRequests.machine(24, 2, 2, 7).build();

        assertThat(planning.plan(request)).isEqualTo(new LayoutPlanning().plan(request));
    }

    /** The toy with some axes bound to a place or with spare ports now and then. */
    private static TopologyRequest tight(TopologyRequest toy, long seed) {
        Network network = toy.network();
        if (seed % 3 == 0) {
            String place =
                    network.places().get((int) (seed % network.places().size())).id();
            network = Copies.with(network, "fixed", List.of(new FixedPlace("A1", place)));
        }
        if (seed % 4 == 1) {
            network = Copies.with(network, "sparePorts", 1);
        }
        if (seed % 2 == 0 && toy.axes().size() > 1) {
            List<String> axes =
                    toy.axes().stream().map(NetworkAxis::id).limit(3).toList();
            network = Copies.with(
                    network,
                    "separations",
                    List.of(
                            new Separation("first", axes, null),
                            new Separation("ends", List.of(axes.getFirst(), axes.getLast()), null)));
        }
        return Copies.with(toy, "network", network);
    }

    private static Map<LimitKind, List<ClashingLimit>> everyLimit(TopologyRequest request) {
        Map<LimitKind, List<ClashingLimit>> all = new EnumMap<>(LimitKind.class);
        for (LimitKind kind : LimitKind.values()) {
            List<String> subjects = switch (kind) {
                case SPUR_LENGTH, FIXED_PLACE ->
                    request.axes().stream().map(NetworkAxis::id).toList();
                case PLACE_ROOM ->
                    request.network().places().stream().map(Place::id).toList();
                case SEPARATION ->
                    request.network().separationList().stream()
                            .map(Separation::id)
                            .toList();
                case STOP_ZONE -> List.of("Z0", "Z1", "Z2", "Z3");
                case PLACES -> List.of();
                default -> List.of("the network");
            };
            if (!subjects.isEmpty()) {
                all.put(
                        kind,
                        subjects.stream()
                                .map(subject -> new ClashingLimit(kind, subject, "", null))
                                .toList());
            }
        }
        return all;
    }

    private static List<ClashingLimit> allBut(List<Widening> givenUp, TopologyRequest request) {
        return everyLimit(request).values().stream()
                .flatMap(List::stream)
                .filter(limit -> givenUp.stream()
                        .noneMatch(one ->
                                one.limit() == limit.limit() && one.subject().equals(limit.subject())))
                .toList();
    }

    /** Whether everything the relaxation adds has the price the widened request gives it. */
    private static boolean priced(Relaxation relaxation) {
        return relaxation.widenings().stream()
                .noneMatch(one -> one.limit() == LimitKind.TRUNK_LENGTH || one.limit() == LimitKind.HOST_LENGTH);
    }

    /** The request as its sender would change it. */
    private static TopologyRequest widened(TopologyRequest request, Widening widening) {
        Network network = request.network();
        double needed = widening.needed() == null ? 0 : widening.needed().si();
        int more = (int) (needed
                - (widening.available() == null ? 0 : widening.available().si()));
        return switch (widening.limit()) {
            case HOST_PORTS -> {
                var ports = new ArrayList<>(network.host().ports());
                double fastest = ports.stream()
                        .mapToDouble(port -> port.commandRate().si())
                        .max()
                        .orElse(0);
                while (ports.size() < needed) {
                    ports.add(new HostPort("more" + ports.size(), new Frequency(fastest)));
                }
                yield hosted(request, ports);
            }
            case COMMAND_RATE ->
                hosted(
                        request,
                        network.host().ports().stream()
                                .map(port -> new HostPort(
                                        port.id(),
                                        new Frequency(Math.max(
                                                needed, port.commandRate().si()))))
                                .toList());
            case CHAIN_DEPTH -> typed(request, type -> Copies.with(type, "chainDepth", type.chainDepth() + more));
            case DRIVE_PORTS -> typed(request, type -> Copies.with(type, "drivePorts", type.drivePorts() + more));
            case BRAKE_OUTPUTS -> typed(request, type -> Copies.with(type, "brakeOutputs", type.brakeOutputs() + more));
            case SPARE_PORTS -> Copies.with(request, "network", Copies.with(network, "sparePorts", (int) needed));
            case PLACE_ROOM ->
                Copies.with(
                        request,
                        "network",
                        network.with(network.places().stream()
                                .map(place -> place.id().equals(widening.subject())
                                        ? Copies.with(place, "maxGateways", (int) needed)
                                        : place)
                                .toList()));
            case PLACES -> {
                var places = new ArrayList<>(network.places());
                NetworkAxis there = request.axes().stream()
                        .filter(axis -> axis.id().equals(widening.subject()))
                        .findFirst()
                        .orElseThrow();
                places.add(new Place("more", there.position(), 1));
                yield Copies.with(request, "network", network.with(places));
            }
            case FIXED_PLACE ->
                Copies.with(
                        request,
                        "network",
                        Copies.with(
                                network,
                                "fixed",
                                requireNonNull(network.fixed()).stream()
                                        .filter(one -> !one.axis().equals(widening.subject()))
                                        .toList()));
            case SEPARATION ->
                Copies.with(
                        request,
                        "network",
                        Copies.with(
                                network,
                                "separations",
                                network.separationList().stream()
                                        .filter(one -> !one.id().equals(widening.subject()))
                                        .toList()));
            case RESERVED_PORTS -> throw new IllegalArgumentException("no axes to come");
            case TRUNK_LENGTH -> cabled(request, CableUse.TRUNK, needed);
            case HOST_LENGTH -> cabled(request, CableUse.HOST, needed);
            case STOP_ZONE, SPUR_LENGTH -> throw new IllegalArgumentException("of single axes");
        };
    }

    private static TopologyRequest hosted(TopologyRequest request, List<HostPort> ports) {
        Network network = request.network();
        return Copies.with(
                request, "network", Copies.with(network, "host", Copies.with(network.host(), "ports", ports)));
    }

    private static TopologyRequest typed(TopologyRequest request, UnaryOperator<GatewayType> wider) {
        return Copies.with(
                request,
                "gatewayTypes",
                request.gatewayTypes().stream().map(wider).toList());
    }

    private static TopologyRequest cabled(TopologyRequest request, CableUse use, double length) {
        var cables = new ArrayList<>(request.cableAssemblies());
        cables.add(new CableAssembly(
                "longer",
                "cable",
                TopologyRequests.euro(9),
                List.of(),
                use,
                new Length(length),
                null,
                null,
                new Length(0.008)));
        return Copies.with(request, "cableAssemblies", cables);
    }
}
