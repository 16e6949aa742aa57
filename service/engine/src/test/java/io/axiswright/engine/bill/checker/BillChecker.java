package io.axiswright.engine.bill.checker;

import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.bill.CableLink;
import io.axiswright.engine.bill.LineDemand;
import io.axiswright.engine.bill.LineKind;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.PriceBreak;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.controlpower.FeedLink;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.design.MountingKind;
import io.axiswright.engine.design.SpareRule;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SpurLink;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads an answer as a buyer and a fitter would, and says what does not add up: from the design, the catalogue and the answer
 * alone, by no class that makes the bill.
 */
final class BillChecker {

    private final Design design;
    private final Catalogue catalogue;
    private final StudyResult answer;
    private final BillResult bill;
    private final List<String> complaints = new ArrayList<>();

    BillChecker(Design design, Catalogue catalogue, StudyResult answer) {
        this.design = design;
        this.catalogue = catalogue;
        this.answer = answer;
        this.bill = answer.billOfMaterials();
    }

    List<String> complaints() {
        checkTrunks();
        checkDrivePorts();
        checkCables();
        checkNumbers();
        for (BillSection section : List.of(bill.required(), bill.optional(), bill.spares())) {
            checkOrders(section);
        }
        checkSpares();
        checkRules();
        return complaints;
    }

    private void complain(boolean wrong, String what) {
        if (wrong) {
            complaints.add(what);
        }
    }

    private GatewayType type(PlacedGateway gateway) {
        return catalogue.gateways().stream()
                .filter(type -> type.id().equals(gateway.gatewayType()))
                .findFirst()
                .orElseThrow();
    }

    /** Every host port starts one trunk or is spare; every gateway hangs on the one before it, and no two on the same. */
    private void checkTrunks() {
        Map<String, PlacedGateway> bySpot = new HashMap<>();
        for (PlacedGateway gateway : answer.topology().gateways()) {
            complain(
                    bySpot.put(gateway.hostPort() + " " + gateway.depth(), gateway) != null,
                    "two gateways in one spot: " + gateway.id());
        }
        for (PlacedGateway gateway : answer.topology().gateways()) {
            PlacedGateway before = bySpot.get(gateway.hostPort() + " " + (gateway.depth() - 1));
            complain(
                    !Objects.equals(before == null ? null : before.id(), gateway.upstream()),
                    gateway.id() + " does not hang on the gateway before it");
            complain(before == null && gateway.depth() != 1, gateway.id() + " hangs on nothing");
        }
        for (HostPort port : Objects.requireNonNull(design.network()).host().ports()) {
            boolean used = bySpot.containsKey(port.id() + " 1");
            complain(
                    used == answer.topology().spareHostPorts().contains(port.id()),
                    "host port " + port.id() + " is used and spare, or neither");
        }
    }

    private void checkDrivePorts() {
        for (PlacedGateway gateway : answer.topology().gateways()) {
            complain(
                    gateway.spurs().size() + gateway.spareDrivePorts()
                            != type(gateway).drivePorts(),
                    "drive ports of " + gateway.id());
        }
        List<String> hung = answer.topology().gateways().stream()
                .flatMap(gateway -> gateway.spurs().stream())
                .map(SpurLink::axis)
                .sorted()
                .toList();
        complain(!hung.equals(design.axes().stream().map(Axis::id).sorted().toList()), "axes and spurs do not match");
    }

    private List<String> cablesLaid() {
        List<String> laid = new ArrayList<>();
        for (PlacedGateway gateway : answer.topology().gateways()) {
            if (gateway.linkCable() != null) {
                laid.add(gateway.linkCable());
            }
            gateway.spurs().forEach(spur -> laid.add(spur.cable()));
        }
        answer.controlPower().links().stream()
                .map(FeedLink::item)
                .filter(Objects::nonNull)
                .forEach(laid::add);
        return laid;
    }

    /** As many cables of each item on the bill as the layout has. */
    private void checkCables() {
        Map<String, Long> laid =
                cablesLaid().stream().collect(Collectors.groupingBy(item -> item, TreeMap::new, Collectors.counting()));
        Map<String, Long> bought = new TreeMap<>();
        for (BillLine line : bill.required().lines()) {
            boolean network = catalogue.cableAssemblies().stream()
                    .filter(cable -> cable.id().equals(line.item()))
                    .map(CableAssembly::use)
                    .map(Enum::name)
                    .anyMatch(List.of("HOST", "TRUNK", "SPUR", "CONTROL_SUPPLY")::contains);
            if (network) {
                bought.put(line.item(), line.quantity().longValueExact());
            }
        }
        complain(!laid.equals(bought), "cables laid " + laid + ", bought " + bought);
    }

    /** Per gateway: its drive ports, trunk input, 24 V input, trunk output if it may pass on; and one port for each host port and axis. */
    private void checkNumbers() {
        var check = bill.connections();
        List<PlacedGateway> gateways = answer.topology().gateways();
        int hostPorts = Objects.requireNonNull(design.network()).host().ports().size();
        int ports = hostPorts + design.axes().size();
        int spare = answer.topology().spareHostPorts().size();
        for (PlacedGateway gateway : gateways) {
            boolean passesOn = type(gateway).chainDepth() > 1;
            ports += type(gateway).drivePorts() + (passesOn ? 3 : 2);
            boolean last = gateways.stream().noneMatch(other -> gateway.id().equals(other.upstream()));
            spare += gateway.spareDrivePorts() + (last && passesOn ? 1 : 0);
        }
        int cables = cablesLaid().size() + joined();
        int lengths = lengths();
        int joints = cables
                + lengths
                + (int) gateways.stream()
                        .filter(gateway -> gateway.linkCable() == null)
                        .count();
        complain(check.ports() != ports, "ports " + check.ports() + " instead of " + ports);
        complain(check.portsSpare() != spare, "spare ports " + check.portsSpare() + " instead of " + spare);
        complain(check.portsUsed() != ports - spare, "used ports " + check.portsUsed());
        complain(check.cables() != cables, "cables " + check.cables() + " instead of " + cables);
        complain(check.lengths() != lengths, "lengths " + check.lengths() + " instead of " + lengths);
        complain(check.cableEnds() != 2 * joints, "cable ends " + check.cableEnds());
        complain(check.cableEndsMatched() != 2 * joints, "matched cable ends " + check.cableEndsMatched());
        complain(check.cabling().size() != joints, "links " + check.cabling());
        complain(!check.gaps().isEmpty(), "gaps " + check.gaps());
        complain(!bill.closing().gaps().isEmpty(), "gaps " + bill.closing().gaps());
    }

    /** Cables of buses, resistors and stops on the bill: as many as links name them, each between two different things. */
    private int joined() {
        List<String> items = catalogue.cableAssemblies().stream()
                .filter(cable -> List.of("BUS_LINK", "BRAKING_RESISTOR", "STOP_SIGNAL")
                        .contains(cable.use().name()))
                .map(CableAssembly::id)
                .toList();
        int bought = 0;
        for (BillLine line : bill.required().lines()) {
            bought += items.contains(line.item()) ? line.quantity().intValueExact() : 0;
        }
        List<CableLink> links = bill.connections().cabling().stream()
                .filter(link -> items.contains(link.item()))
                .toList();
        complain(links.size() != bought, "of " + bought + " cables of buses, resistors and stops " + links + " join");
        complain(links.stream().anyMatch(link -> link.from().equals(link.to())), "a cable joins a thing to itself");
        return bought;
    }

    /** Every load whose circuit has a cable on the bill has one length, the feeder another; together they are what is bought. */
    private int lengths() {
        Map<String, Double> laid = new TreeMap<>();
        Map<String, Integer> to = new TreeMap<>();
        for (CableLink link : bill.connections().cabling()) {
            if (link.length() != null) {
                laid.merge(link.item(), link.length().si(), Double::sum);
                to.merge(link.to(), 1, Integer::sum);
            }
        }
        for (BillLine line : bill.required().lines()) {
            if (catalogue.bulkCables().stream().anyMatch(cable -> cable.id().equals(line.item()))) {
                double more = line.demanded().doubleValue() - laid.getOrDefault(line.item(), 0.0);
                complain(more < -1e-6 || more > 0.01 * to.size(), line.id() + " is laid otherwise");
            }
        }
        for (var circuit : answer.supply().circuits()) {
            for (String load : circuit.loads()) {
                int times = to.getOrDefault("load " + load, 0);
                boolean cabled = bill.required().lines().stream()
                        .filter(line -> laid.containsKey(line.item()))
                        .flatMap(line -> line.demands().stream())
                        .anyMatch(demand -> demand.asker().equals("circuit " + circuit.id()));
                complain(times > 1 || times == 1 && !cabled, "load " + load + " has " + times + " cables");
            }
            complain(
                    circuit.loads().stream().noneMatch(load -> to.containsKey("load " + load))
                            && bill.required().lines().stream()
                                    .filter(line -> laid.containsKey(line.item()))
                                    .flatMap(line -> line.demands().stream())
                                    .anyMatch(demand -> demand.asker().equals("circuit " + circuit.id())),
                    "circuit " + circuit.id() + " has cable and no load");
        }
        complain(to.values().stream().anyMatch(times -> times > 1), "two lengths end at one place " + to);
        return to.size();
    }

    /** What is ordered of an item in a section covers the need in whole packs, at the price the catalogue has for so much. */
    private void checkOrders(BillSection section) {
        BigDecimal total = BigDecimal.ZERO;
        for (BillLine line : section.lines()) {
            List<BillLine> order = section.lines().stream()
                    .filter(other -> other.item().equals(line.item()))
                    .toList();
            BigDecimal needed = sum(order.stream().map(BillLine::quantity).toList());
            BigDecimal ordered = sum(order.stream().map(BillLine::orderQuantity).toList());
            complain(line.orderQuantity().compareTo(line.quantity()) < 0, line.id() + " orders too few");
            Money alone = catalogue.find(line.item()).orElseThrow().price();
            BigDecimal price = alone == null ? null : alone.amount();
            BigDecimal least = needed;
            for (SaleTerms terms : catalogue.saleTermsList()) {
                if (terms.item().equals(line.item())) {
                    int minimum = terms.minimumOrder() == null ? 0 : terms.minimumOrder();
                    int pack = terms.pack() == null ? 1 : terms.pack();
                    least = BigDecimal.valueOf(
                            Math.ceilDiv(Math.max(needed.intValueExact(), minimum), pack) * (long) pack);
                    for (PriceBreak step : terms.breaks()) {
                        price = ordered.intValueExact() >= step.from()
                                ? step.price().amount()
                                : price;
                    }
                }
            }
            complain(ordered.compareTo(least) != 0, line.item() + ": ordered " + ordered + " instead of " + least);
            if (price != null) {
                BigDecimal cost = price.multiply(line.orderQuantity()).setScale(2, RoundingMode.HALF_UP);
                complain(
                        cost.compareTo(Objects.requireNonNull(line.linePrice()).amount()) != 0,
                        line.id() + " costs " + line.linePrice() + " instead of " + cost);
                total = total.add(cost);
            }
        }
        complain(total.compareTo(section.total().amount()) != 0, "total " + section.total() + " instead of " + total);
    }

    private static BigDecimal sum(List<BigDecimal> numbers) {
        return numbers.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Every demand a line says a rule has made is one the rule makes, and every rule has made its own on the lines it leads to. */
    private void checkRules() {
        Map<String, BigDecimal> wanted = new TreeMap<>();
        Map<String, BigDecimal> there = new TreeMap<>();
        Map<String, Map<String, Object>> facts = facts();
        for (DemandRule rule : catalogue.demandRuleList()) {
            facts.forEach((asker, known) -> {
                if (asker.startsWith(start(rule.per()))) {
                    want(rule, known, asker, BigDecimal.ONE, "", wanted);
                }
            });
        }
        for (BillLine line : lines()) {
            Item item = catalogue.find(line.item()).orElseThrow();
            for (LineDemand demand : line.demands()) {
                if (demand.rule() != null) {
                    there.merge(
                            key(demand.rule(), demand.asker(), line.item(), String.valueOf(demand.via())),
                            demand.quantity(),
                            BigDecimal::add);
                }
                if (line.kind() != LineKind.SPARE) {
                    for (DemandRule rule : catalogue.demandRuleList()) {
                        Map<String, Object> known = facts.get(demand.asker());
                        want(
                                rule,
                                known == null ? Objects.requireNonNull(facts.get("the machine")) : known,
                                demand.asker(),
                                PlainRules.counted(rule, item).multiply(demand.quantity()),
                                line.id(),
                                wanted);
                    }
                }
            }
        }
        wanted.replaceAll((_, quantity) -> quantity.stripTrailingZeros());
        there.replaceAll((_, quantity) -> quantity.stripTrailingZeros());
        complain(!wanted.equals(there), "rules bring " + there + " instead of " + wanted);
    }

    private void want(
            DemandRule rule,
            Map<String, Object> known,
            String asker,
            BigDecimal times,
            String via,
            Map<String, BigDecimal> wanted) {
        String item = PlainRules.item(rule, catalogue, known);
        if (item != null && times.signum() > 0) {
            wanted.merge(
                    key(rule.id(), asker, item, via.isEmpty() ? "null" : via),
                    times.multiply(new BigDecimal(Double.toString(rule.quantity()))),
                    BigDecimal::add);
        }
    }

    private static String key(String rule, String asker, String item, String via) {
        return rule + " of " + asker + ": " + item + " via " + via;
    }

    /** How those begin who ask by a rule that counts parts of the design; nobody's name begins so where it counts items. */
    private static String start(DemandBasis per) {
        return switch (per) {
            case MACHINE -> "the machine";
            case AXIS -> "axis ";
            case CIRCUIT -> "circuit ";
            case ITEM, LENGTH -> "nobody";
        };
    }

    private List<BillLine> lines() {
        return Stream.of(bill.required(), bill.optional(), bill.customerSupplied(), bill.noCharge(), bill.spares())
                .flatMap(section -> section.lines().stream())
                .toList();
    }

    /** What the answer and the design say of the machine, each axis and each circuit, by who asks. */
    private Map<String, Map<String, Object>> facts() {
        Map<String, Object> machine = new HashMap<>();
        machine.put("AXES", (double) design.axes().size());
        machine.put("CIRCUITS", (double) answer.supply().circuits().size());
        machine.put("GATEWAYS", (double) answer.topology().gateways().size());
        machine.put("MAINS_VOLTAGE", design.mains().voltage().si());
        machine.put(
                "PROSPECTIVE_FAULT_CURRENT",
                design.mains().prospectiveFaultCurrent().si());
        machine.put("FEEDER_CURRENT", answer.supply().feeder().designCurrent().si());
        machine.put("ALTITUDE", design.site().altitude().si());
        machine.put("AMBIENT", design.site().ambient().si());
        machine.put("ENCLOSURE_AMBIENT", design.site().enclosureAmbient().si());
        machine.put("CODE_BASIS", answer.codeBasis().name());
        machine.put("SUPPLY_SYSTEM", design.mains().system().name());
        if (answer.braking().groups().stream().anyMatch(group -> group.chosen() != null)) {
            machine.put("BRAKING_UNIT", true);
        }
        Map<String, Map<String, Object>> facts = new TreeMap<>();
        facts.put("the machine", machine);
        for (int k = 0; k < design.axes().size(); k++) {
            Axis axis = design.axes().get(k);
            var duty = answer.duty().axes().get(k);
            Map<String, Object> known = new HashMap<>(machine);
            known.put("AXIS_PEAK_TORQUE", duty.figures().peakTorque().si());
            known.put("AXIS_RMS_TORQUE", duty.figures().rmsTorque().si());
            known.put("AXIS_PEAK_SPEED", duty.figures().peakSpeed().si());
            known.put("AXIS_PEAK_POWER", duty.figures().peakMotoringPower().si());
            known.put("DRIVE_UNIT", String.valueOf(duty.driveUnit()));
            for (PlacedGateway gateway : answer.topology().gateways()) {
                for (SpurLink spur : gateway.spurs()) {
                    if (spur.axis().equals(axis.id())) {
                        known.put("SPUR_LENGTH", spur.cableLength().si());
                    }
                }
            }
            put(
                    known,
                    "FOOT_MOUNTED",
                    axis.mounting() != null && axis.mounting().kind() == MountingKind.FOOT);
            put(known, "FORCED_VENTILATION", duty.ventilationKit() != null);
            put(known, "HOLDING_BRAKE", duty.holdingBrake() != null);
            put(known, "KEEP_ALIVE", axis.drive().keepAlive());
            put(known, "SHARED_BUS", axis.busGroup() != null);
            put(known, "STOP_ZONE", axis.stopZone() != null);
            facts.put("axis " + axis.id(), known);
        }
        for (var circuit : answer.supply().circuits()) {
            Map<String, Object> known = new HashMap<>(machine);
            known.put("CIRCUIT_CURRENT", circuit.designCurrent().si());
            known.put("CIRCUIT_VOLTAGE", circuit.voltage().si());
            known.put("CIRCUIT_LOADS", (double) circuit.loads().size());
            known.put("CIRCUIT_LENGTH", circuit.longestRoute().si());
            known.put("CIRCUIT_USE", circuit.use().name());
            known.put("CIRCUIT_CONNECTION", circuit.connection().name());
            facts.put("circuit " + circuit.id(), known);
        }
        return facts;
    }

    private static void put(Map<String, Object> known, String flag, boolean is) {
        if (is) {
            known.put(flag, true);
        }
    }

    /** Spares of cables and gateways, the kinds the tests have rules for. */
    private void checkSpares() {
        Map<String, Integer> wanted = new TreeMap<>();
        for (SpareRule rule : Objects.requireNonNullElse(design.spares(), List.<SpareRule>of())) {
            for (BillLine line : bill.required().lines()) {
                boolean concerned = rule.kind() == ItemKind.GATEWAY
                        ? catalogue.gateways().stream().anyMatch(g -> g.id().equals(line.item()))
                        : catalogue.cableAssemblies().stream().anyMatch(c -> c.id().equals(line.item()));
                if (concerned) {
                    double share = rule.share() == null ? 0 : rule.share();
                    int least = rule.atLeast() == null ? 1 : rule.atLeast();
                    wanted.put(line.item(), Math.max(least, (int)
                            Math.ceil(share * line.quantity().intValueExact() - 1e-9)));
                }
            }
        }
        Map<String, Integer> there = new TreeMap<>();
        bill.spares()
                .lines()
                .forEach(line -> there.put(line.item(), line.quantity().intValueExact()));
        complain(!wanted.equals(there), "spares " + there + " instead of " + wanted);
    }
}
